/** A page or a feed as a flat list of its elements in their order, read by a parser that is not ours. */
import { Parser } from "htmlparser2";

export interface Element {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  /** The element it lies in; none for the outermost. */
  readonly parent: Element | undefined;
  /** Its text and that of everything in it. */
  text: string;
}

export function readMarkup(markup: string, options: { xml: boolean } = { xml: false }): Element[] {
  const elements: Element[] = [];
  const open: Element[] = [];
  const parser = new Parser(
    {
      onopentag: (name, attributes) => {
        const element: Element = { name, attributes, parent: open.at(-1), text: "" };
        elements.push(element);
        open.push(element);
      },
      ontext: (text) => {
        for (const element of open) element.text += text;
      },
      onclosetag: () => open.pop(),
    },
    { xmlMode: options.xml, decodeEntities: true },
  );
  parser.end(markup);
  return elements;
}
