/** An element that the page is known to have. */
export function element<T extends HTMLElement = HTMLElement>(id: string): T {
  const found = document.getElementById(id);
  if (!found) throw new Error(`the page has no element '${id}'`);
  return found as T;
}
