/** Settings by which an editor with a YAML language server checks every file of a data folder, also those without a comment in front. */
import { FILE_KINDS, type FileKindName, kindOf } from "../../engine/records/file-kinds.ts";

/**
 * `schemas` and `data` are folders seen from where the editor was opened, `paths` the files in `data`. A kind is named by a pattern, so
 * that files to come are checked too; where the pattern would take in files of another kind, each file is named, for not every
 * editor knows exceptions. Markdown files are not there: no such server reads the facts in them.
 */
export function editorSettings(schemas: string, data: string, paths: readonly string[]): object {
  const kinds = (Object.keys(FILE_KINDS) as FileKindName[]).flatMap((kind): [string, string[]][] => {
    const pattern = patternOf(FILE_KINDS[kind].path);
    if (!pattern.endsWith(".yaml")) return [];
    const isAlone = paths.every((path) => kindOf(path) === kind || !FILE_KINDS[kind].path.test(path));
    const files = isAlone ? [pattern] : paths.filter((path) => kindOf(path) === kind).sort();
    return [[`./${schemas}/${kind}.json`, files.map((file) => `${data}/${file}`)]];
  });
  return { "yaml.schemas": Object.fromEntries(kinds), "yaml.format.enable": false };
}

/** ^parts\/[^/]+\.yaml$ is parts/*.yaml. */
function patternOf(path: RegExp): string {
  return path.source
    .replace(/^\^|\$$/g, "")
    .replaceAll("\\/", "/")
    .replaceAll("\\.", ".")
    .replaceAll("[^/]+", "*");
}
