/** The figures of a sum as one text, "teeth=20; threads=16", by the name of their inputs. */

export type Figures =
  | { readonly as: "figures"; readonly figures: Readonly<Record<string, string>> }
  | { readonly as: "refused"; readonly why: string };

/** A name that stands twice is refused, for which of the two is meant can't be known. */
export function readFigures(text: string): Figures {
  const figures = new Map<string, string>();
  for (const one of text.split(";").map((it) => it.trim())) {
    if (one === "") continue;
    const [, name, value = ""] = /^([^=]*[^=\s])\s*=\s*(.*)$/s.exec(one) ?? [];
    if (name === undefined) return refused(`'${one}' is no figure; write them as "teeth=20; threads=16".`);
    if (figures.has(name))
      return refused(`'${name}' is given twice: '${figures.get(name)}' and '${value}'. Leave one out.`);
    figures.set(name, value);
  }
  return { as: "figures", figures: Object.fromEntries(figures) };
}

function refused(why: string): Figures {
  return { as: "refused", why };
}
