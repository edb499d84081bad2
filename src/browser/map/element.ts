/** Makes an element. Text is put in as text, never as markup. */
type Properties = Readonly<Record<string, string | number | boolean | undefined | ((event: Event) => void)>>;

/** A property that begins with 'on' is a listener; true is an attribute without value; false and undefined are left out. */
export function element<Name extends keyof HTMLElementTagNameMap>(
  name: Name,
  properties: Properties = {},
  ...content: readonly (Node | string)[]
): HTMLElementTagNameMap[Name] {
  const made = document.createElement(name);
  for (const [property, value] of Object.entries(properties)) {
    if (typeof value === "function") made.addEventListener(property.slice(2), value);
    else if (value === true) made.setAttribute(property, "");
    else if (value !== false && value !== undefined) made.setAttribute(property, String(value));
  }
  made.append(...content);
  return made;
}
