/** What an attribute of a tag says, in either kind of quotes; the tag's text without its brackets, as it stands in the XML. */
export function xmlAttribute(tag: string, name: string): string | undefined {
  const pattern = patterns.get(name) ?? new RegExp(`(?:^|[\\s:])${name}\\s*=\\s*(?:"([^"]*)"|'([^']*)')`);
  patterns.set(name, pattern);
  const [, double, single] = pattern.exec(tag) ?? [];
  const raw = double ?? single;
  return !raw?.includes("&")
    ? raw
    : raw.replaceAll(/&(?:quot|apos|lt|gt|amp);/g, (entity) => ENTITIES[entity] as string);
}

/** A yes of XML (xsd:boolean). */
export function isXmlTrue(text: string | undefined): boolean {
  return text === "1" || text === "true";
}

/** A sheet has hundreds of thousands of cells and asks for few names. */
const patterns = new Map<string, RegExp>();

const ENTITIES: Readonly<Record<string, string>> = {
  "&quot;": '"',
  "&apos;": "'",
  "&lt;": "<",
  "&gt;": ">",
  "&amp;": "&",
};
