/** What can be wrong with any page, whatever is on it: a rule in words, and how a page breaks it. */
import type { Element } from "./read-markup.ts";

type Faults = (elements: readonly Element[]) => string[];

export const PAGE_FAULTS: Readonly<Record<string, Faults>> = {
  "has a language, a title, one main part and one main heading": (elements) => {
    const count = (name: string, parent?: string): number =>
      elements.filter((it) => it.name === name && it.text.trim() && (!parent || it.parent?.name === parent)).length;
    return [
      ...(elements.find(({ name }) => name === "html")?.attributes.lang ? [] : ["has no language"]),
      ...(count("title", "head") === 1 ? [] : [`has ${count("title", "head")} titles`]),
      ...(count("h1") === 1 ? [] : [`has ${count("h1")} main headings`]),
      ...(count("main") === 1 ? [] : [`has ${count("main")} main parts`]),
    ];
  },

  "uses every id once, and points only at ids that are there": (elements) => {
    const ids = elements.flatMap(({ attributes }) => attributes.id ?? []);
    const wanted = elements.flatMap(({ attributes }) =>
      ["for", "aria-labelledby", "aria-describedby", "aria-controls"].flatMap(
        (name) => attributes[name]?.split(/\s+/) ?? [],
      ),
    );
    return [
      ...ids.filter((id, i) => ids.indexOf(id) !== i).map((id) => `has the id '${id}' twice`),
      ...ids.filter((id) => /^$|\s/.test(id)).map((id) => `has an id '${id}'`),
      ...wanted.filter((id) => !ids.includes(id)).map((id) => `points at '${id}', which is not there`),
    ];
  },

  "carries a strict policy before anything that is loaded": (elements) => {
    const policies = elements.filter(({ attributes }) => attributes["http-equiv"] === "Content-Security-Policy");
    const [policy] = policies;
    if (!policy || policies.length > 1) return [`has ${policies.length} policies`];
    const loads = elements.findIndex(({ name }) => ["link", "script", "style", "img", "base"].includes(name));
    const allowed = new Map(
      (policy.attributes.content ?? "").split(";").map((part): [string, string] => {
        const [name = "", ...values] = part.trim().split(/\s+/);
        return [name, values.join(" ")];
      }),
    );
    return [
      ...(loads === -1 || elements.indexOf(policy) < loads ? [] : ["loads something before its policy"]),
      ...(allowed.get("default-src") === "'none'" ? [] : ["allows by default"]),
      ...(allowed.get("base-uri") === "'none'" ? [] : ["lets its links be moved"]),
      ...[...allowed]
        .filter(([name, values]) => !(name === "script-src" ? RUN_BY : LOADED_FROM).test(values))
        .map(([name, values]) => `allows ${name} ${values}`),
    ];
  },

  "holds no script, handler or style of its own": (elements) =>
    elements.flatMap(({ name, attributes }) => [
      ...(name === "style" ? ["has a style sheet inside"] : []),
      ...(name === "script" && !attributes.src && attributes.type !== "application/ld+json"
        ? ["has a script inside"]
        : []),
      ...Object.entries(attributes)
        .filter(
          ([attribute, value]) => /^(style$|on)/.test(attribute) || /^\s*(javascript|vbscript|data):/i.test(value),
        )
        .map(([attribute, value]) => `has ${name} ${attribute}=${value}`),
    ]),

  "has no heading over nothing, and no list, row or section without a word": (elements) => [
    ...elements
      .filter((it) => SAYS_SOMETHING.test(it.name) && it.text.trim() === "" && !isFilledLater(it))
      .map(({ name, attributes, parent }) => `has an empty ${name} ${JSON.stringify(attributes)} in ${parent?.name}`),
    ...elements
      .filter(({ name, parent }) => name === "section" && parent !== undefined)
      .filter((section) => {
        const heading = elements.find((it) => it.parent === section && /^h\d$/.test(it.name));
        if (heading === undefined) return false;
        const buttons = elements.filter((it) => isButton(it) && isWithin(it, section));
        const words = [heading, ...buttons].reduce((left, { text }) => left.replace(text, ""), section.text);
        return words.trim() === "";
      })
      .map(({ text }) => `has nothing under '${text.trim()}'`),
  ],

  "says of what there is none of that there is none, and not 0": (elements) =>
    elements
      .filter(({ name, attributes, parent }) => attributes.class === "count" || (name === "a" && parent?.name === "td"))
      .filter(({ text }) => /(^|: )0 /.test(text))
      .map(({ text }) => `says '${text}'`),

  "loads nothing from elsewhere": (elements) =>
    elements.flatMap((element) =>
      Object.entries(element.attributes)
        .filter(([attribute, value]) => loads(element, attribute) && /^\s*([a-z][a-z0-9+.-]*:|\/\/)/i.test(value))
        .map(([attribute, value]) => `has ${element.name} ${attribute}=${value}`),
    ),
};

const SAYS_SOMETHING = /^(h\d|section|ul|ol|dl|li|dt|dd|table|th|td|summary|caption|a|button|label|p)$/;
/** Scripts find what they fill by its id, or show it then. */
function isFilledLater({ attributes, parent }: Element): boolean {
  return "id" in attributes || "hidden" in attributes || (parent !== undefined && "hidden" in parent.attributes);
}

/** It leads away: what a section has to say is beside it. */
function isButton({ name, attributes }: Element): boolean {
  return name === "a" && attributes.class === "button";
}

function isWithin({ parent }: Element, other: Element): boolean {
  return parent !== undefined && (parent === other || isWithin(parent, other));
}

const RUN_BY = /^'self'( 'wasm-unsafe-eval')?$/;
const LOADED_FROM = /^('none'|'self'( data:)?)$/;
const LOADING = ["src", "srcset", "poster", "background", "data", "action", "formaction", "xlink:href"];

function loads({ name, attributes }: Element, attribute: string): boolean {
  if (attribute !== "href") return LOADING.includes(attribute);
  if (name === "link") return !/^(canonical|alternate)$/.test(attributes.rel ?? "");
  return name === "use" || name === "image";
}
