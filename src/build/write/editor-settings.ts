/** Settings by which an editor with a YAML language server checks every file of a data folder, also those without a comment in front. */
import { FILE_KINDS } from "../../engine/records/file-kinds.ts";

/** Kinds whose files lie beside files of other kinds: those are left out. */
const NOT_THESE: Readonly<Record<string, readonly string[]>> = {
  vehicles: ["vehicles/traits.yaml", "vehicles/plates.yaml"],
};

/** `schemas` and `data` are folders seen from where the editor was opened. Markdown files have their facts checked by npm run check. */
export function editorSettings(schemas: string, data: string): object {
  const places = Object.entries(FILE_KINDS).flatMap(([kind, { path }]): [string, string[]][] => {
    // ^parts\/[^/]+\.yaml$ is parts/*.yaml
    const glob = path.source
      .replace(/^\^|\$$/g, "")
      .replaceAll("\\/", "/")
      .replaceAll("\\.", ".")
      .replaceAll("[^/]+", "*");
    if (!glob.endsWith(".yaml")) return [];
    return [
      [
        `./${schemas}/${kind}.json`,
        [`${data}/${glob}`, ...(NOT_THESE[kind] ?? []).map((other) => `!${data}/${other}`)],
      ],
    ];
  });
  return { "yaml.schemas": Object.fromEntries(places), "yaml.format.enable": false };
}
