/** A page as the editor's server gives it: with its complaints, and the script that loads it again. Published pages have neither. */

/** Addresses of the server's own files. A published site has none that begins with a dot. */
export const OWN = { events: "/.yearmark/events", script: "/.yearmark/on-page.js", style: "/.yearmark/on-page.css" };

/** `edition` names the state of the data that the page was made from. */
export function dressPage(page: string, edition: string, box: string): string {
  const place = `<div id="yearmark-dev" data-edition="${edition}">${box}</div><p id="yearmark-dev-status" role="status"></p>`;
  // Put in by functions: what a text would mean to replace() as a pattern, '$&' say, stays as it is.
  return page
    .replace(
      "</head>",
      (end) =>
        `<link rel="stylesheet" href="${OWN.style}">\n<script type="module" src="${OWN.script}"></script>\n${end}`,
    )
    .replace("<body>", (start) => `${start}\n${place}`);
}

/** What stands in the place of every page before there is a site. */
export function alone(title: string, words: string): string {
  return `<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<title>${title}</title>
<meta name="viewport" content="width=device-width, initial-scale=1">
</head>
<body>
<main class="yearmark-dev-alone">
<h1>${title}</h1>
<p>${words}</p>
</main>
</body>
</html>
`;
}
