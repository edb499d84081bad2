/** On every page of the editor's server, and on no published one: loads the page again when the data changed, and shows what is wrong. */

/** What the server tells: which state of the data it shows now, and the box of complaints. */
interface News {
  readonly edition: string;
  readonly box: string;
}

const place = document.querySelector<HTMLElement>("#yearmark-dev");
const spoken = document.querySelector<HTMLElement>("#yearmark-dev-status");
const FOLDED = "yearmark-dev-folded";
let source: EventSource | undefined;
let shown: string | undefined;

/** A browser keeps only six connections to a server: a page that nobody sees gives its own back. */
function listen(): void {
  if (source || document.hidden) return;
  source = new EventSource("/.yearmark/events");
  source.onmessage = ({ data }) => {
    const { edition, box } = JSON.parse(data as string) as News;
    if (edition !== place?.dataset.edition) location.reload();
    else show(box);
  };
}

function stop(): void {
  source?.close();
  source = undefined;
}

function show(box: string): void {
  if (!place || box === shown) return;
  const isNew = shown !== undefined;
  shown = box;
  place.innerHTML = box;
  keepFolded();
  if (isNew && spoken) spoken.textContent = place.querySelector("summary")?.textContent ?? "Nothing to complain about.";
}

/**
 * Folded or not, as it was left: errors while they are the same ones, for others are worth a look; warnings whatever they are.
 * The server folds warnings.
 */
function keepFolded(): void {
  const details = place?.querySelector("details");
  if (!details) return;
  const about = details.classList.contains("grave") ? details.textContent : "warnings";
  const [left, open] = JSON.parse(sessionStorage.getItem(FOLDED) ?? "[]") as [about?: string, open?: boolean];
  if (left === about && open !== undefined) details.open = open;
  // Enter is a click as well. It opens or folds only when this is over.
  details.querySelector("summary")?.addEventListener("click", () => {
    sessionStorage.setItem(FOLDED, JSON.stringify([about, !details.open]));
  });
}

document.addEventListener("visibilitychange", () => (document.hidden ? stop() : listen()));
addEventListener("pagehide", stop);
addEventListener("pageshow", listen);
keepFolded();
listen();

export {};
