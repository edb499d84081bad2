/** A document of the site. Throws with what could not be loaded. */
export async function fetchJson<T>(url: URL): Promise<T> {
  const answer = await fetch(url);
  if (!answer.ok) throw new Error(`${url.pathname} could not be loaded (${answer.status})`);
  return (await answer.json()) as T;
}
