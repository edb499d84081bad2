/** What has to be written where between braces or brackets, so that every comment, quote and line there stays as it is. */
import { isMap, isPair, type Node, type Pair, type Scalar, type YAMLMap, type YAMLSeq } from "yaml";
import { isFields } from "./without-defaults.ts";
import { yamlOnOneLine } from "./yaml-text.ts";

/** What stands from one place to another becomes this. */
export interface Edit {
  readonly from: number;
  readonly to: number;
  readonly text: string;
}

/** Where an item stands, without its comma. */
export interface Spot {
  readonly from: number;
  readonly to: number;
}

/** New items behind the one with this number, each on a line of its own if that one is; -1 is before all of them. */
export function insertInFlow(
  yaml: string,
  around: YAMLMap | YAMLSeq,
  after: number,
  texts: readonly string[],
): Edit[] | undefined {
  const [open = 0, close = 0] = around.range ?? [];
  const spots = spotsIn(around);
  if (spots.length === 0) {
    const blank = isMap(around) ? " " : "";
    if (yaml.slice(open + 1, close - 1).trim() !== "") return undefined;
    return [{ from: open + 1, to: close - 1, text: blank + texts.join(", ") + blank }];
  }
  const { from, to } = spots[Math.max(0, after)] as Spot;
  const pad = padBefore(yaml, from);
  const between = pad === undefined ? ", " : `,\n${pad}`;
  if (after < 0) return [{ from, to: from, text: texts.map((text) => text + between).join("") }];
  const rest = /^[ \t]*(,?)[ \t]*(?:#[^\r\n]*)?(?=\r?\n)/.exec(yaml.slice(to));
  if (pad === undefined || !rest) return [{ from: to, to, text: texts.map((text) => `, ${text}`).join("") }];
  const comma = rest[1] as string;
  // Its comma stands further below.
  if (comma === "" && after < spots.length - 1) return undefined;
  const at = to + rest[0].length;
  const line = { from: at, to: at, text: `\n${pad}${texts.join(between)}${comma}` };
  return comma === "" ? [{ from: to, to, text: "," }, line] : [line];
}

/** With its comma; a line of its own goes whole, if nothing else stands on it. Nothing where a comment would go too. */
export function removeInFlow(yaml: string, around: YAMLMap | YAMLSeq, i: number): Edit[] | undefined {
  const spots = spotsIn(around);
  const { from, to } = spots[i] as Spot;
  const [before, behind] = [spots[i - 1], spots[i + 1]];
  const cut = (start: number, end: number): Edit[] => [{ from: start, to: end, text: "" }];
  const isBare = (start: number, end: number): boolean => !yaml.slice(start, end).includes("#");
  const pad = padBefore(yaml, from);
  const line = /^[ \t]*,?[ \t]*\r?\n/.exec(yaml.slice(to));
  if (behind && pad !== undefined && line) return cut(from - pad.length, to + line[0].length);
  if (behind && isBare(to, behind.from)) return cut(from, behind.from);
  if (!behind && before && isBare(before.to, from)) return cut(before.to, to);
  return !behind && !before ? cut(from, to) : undefined;
}

/** In the manner of JSON every name and text has its quotes. */
export function isJson(yaml: string, { range }: YAMLMap | YAMLSeq): boolean {
  return /^[[{\s]*"/.test(yaml.slice(range?.[0] ?? 0, range?.[1] ?? 0));
}

export function pairText(name: string, value: unknown, json: boolean): string {
  return `${json ? JSON.stringify(name) : yamlOnOneLine(name)}: ${flowText(value, json)}`;
}

/** As it stands between braces or brackets. */
export function flowText(value: unknown, json: boolean): string {
  if (Array.isArray(value)) return `[${value.map((item) => flowText(item, json)).join(", ")}]`;
  if (!isFields(value)) return json ? JSON.stringify(value) : yamlOnOneLine(value);
  const pairs = Object.entries(value).map(([name, inner]) => pairText(name, inner, json));
  return pairs.length === 0 ? "{}" : `{ ${pairs.join(", ")} }`;
}

function spotsIn(around: YAMLMap | YAMLSeq): Spot[] {
  return around.items.map((item) => {
    if (!isPair(item)) return spotOf(item as Node);
    const { key, value } = item as Pair<Scalar, Node | null>;
    return { from: spotOf(key).from, to: Math.max(spotOf(key).to, value ? spotOf(value).to : 0) };
  });
}

function spotOf({ range }: Node): Spot {
  return { from: range?.[0] ?? 0, to: range?.[1] ?? 0 };
}

/** The blanks before something that stands first on its line. */
function padBefore(yaml: string, at: number): string | undefined {
  const line = yaml.lastIndexOf("\n", at - 1) + 1;
  const before = yaml.slice(line, at);
  return before.trim() === "" && line > 0 ? before : undefined;
}
