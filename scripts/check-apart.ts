/** Which options of npm run check do not go together: the answer would pass over one of the two, and nobody would see it. */
const APART = [
  ["rules", "data", "against", "json", "sarif", "accepted", "words"],
  ["words", "against", "sarif", "accepted"],
  ["accepted", "against", "json", "sarif"],
  ["json", "sarif"],
] as const;

type Option = (typeof APART)[number][number];

/** Two that were both given, with their signs; nothing where all go together. */
export function goApart(
  values: Readonly<Partial<Record<Option, string | boolean | undefined>>>,
): readonly [string, string] | undefined {
  const isGiven = (option: Option): boolean => values[option] !== undefined && values[option] !== false;
  for (const [one, ...others] of APART)
    for (const other of others) if (isGiven(one) && isGiven(other)) return [`--${one}`, `--${other}`];
  return undefined;
}
