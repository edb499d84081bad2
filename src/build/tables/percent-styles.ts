/**
 * Which styles of a workbook show a number as a percentage: 0.5 stands there as 50 %. The XML of the styles names a number format for
 * each style of a cell; 9 and 10 are percentages everywhere (ECMA-376 part 1, 18.8.30), and so is every format of the file's own
 * with a % in it, unless the sign stands in quotes or behind a backslash: such a one only shows the sign and leaves the number alone.
 */
import { xmlAttribute } from "./xml-attribute.ts";

const BUILT_IN = ["9", "10"];

/** Numbers of styles, as the cells name them. */
export function percentStyles(styles: string): ReadonlySet<string> {
  const own = new Map<string, boolean>();
  for (const [, tag = ""] of styles.matchAll(/<(?:\w+:)?numFmt\s((?:"[^"]*"|'[^']*'|[^"'<>])*)>/g))
    own.set(xmlAttribute(tag, "numFmtId") ?? "", isPercent(xmlAttribute(tag, "formatCode") ?? ""));
  const base = formatsOf(styles, "cellStyleXfs");
  return new Set(
    formatsOf(styles, "cellXfs").flatMap(({ format, under }, i) => {
      const id = format ?? base[Number(under ?? -1)]?.format ?? "0";
      return (own.get(id) ?? BUILT_IN.includes(id)) ? [String(i)] : [];
    }),
  );
}

interface Style {
  readonly format: string | undefined;
  /** The number of the style that it is a kind of. */
  readonly under: string | undefined;
}

function formatsOf(styles: string, list: string): Style[] {
  const inner = new RegExp(`<(?:\\w+:)?${list}[\\s>]([\\s\\S]*?)</(?:\\w+:)?${list}>`).exec(styles)?.[1] ?? "";
  return [...inner.matchAll(/<(?:\w+:)?xf(?=[\s/>])([^<>]*)>/g)].map(([, tag = ""]) => ({
    format: xmlAttribute(tag, "numFmtId"),
    under: xmlAttribute(tag, "xfId"),
  }));
}

function isPercent(code: string): boolean {
  return code.replaceAll(/"[^"]*"|\\.|_.|\*.|\[[^\]]*\]/g, "").includes("%");
}
