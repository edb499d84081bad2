/** What is wrong with the data, as it lies over every page while an editor works. It folds away, and is gone when all is mended. */
import { type Html, html } from "../../site/includes/html.ts";
import type { Finding } from "../data/read-folder.ts";
import { countFindings, harmless } from "../data/show-findings.ts";

/** More than these nobody mends from one page; the command shows all. */
const MOST = 50;

/** `notes` are said above the findings: that the page is not of today, say. Nothing to say, no box; warnings alone are folded. */
export function complaintBox(findings: readonly Finding[], folder: string, notes: readonly string[] = []): string {
  if (findings.length + notes.length === 0) return "";
  const more = findings.length - MOST;
  const isGrave = notes.length > 0 || findings.some(({ severity }) => severity === "error");
  return html`<details class="yearmark-dev${isGrave ? " grave" : ""}"${isGrave ? html` open` : ""}>
<summary>${findings.length > 0 ? countFindings(findings) : "A note"}</summary>
<div class="yearmark-dev-all" tabindex="0" role="region" aria-label="Complaints about the data">
${notes.map((note) => html`<p>${note}</p>`)}
<ol>${findings.slice(0, MOST).map((finding) => item(finding, folder))}</ol>
${more > 0 ? html`<p>And ${more} more: npm run check shows all.</p>` : ""}
</div>
</details>`.toString();
}

/** The same as the terminal says. */
function item(finding: Finding, folder: string): Html {
  const { file, position, severity, rule, message, shown, also = [], car, hint } = finding;
  const { column, length } = position;
  const place = (at: string, where?: { line: number; column: number }): Html =>
    html`<code>${harmless(`${folder}/${at}${where ? `:${where.line}:${where.column}` : ""}`)}</code>`;
  return html`<li class="${severity}"><p><b>${severity}</b> ${place(file, position)} <small>${rule}</small></p>
<p>${harmless(message)}</p>
${shown ? html`<pre tabindex="0" aria-label="Line ${position.line}">${marked(harmless(shown), column - 1, length)}</pre>` : ""}
${also.map((it) => html`<p>also ${place(it.file, it.position)} ${harmless(it.message)}</p>`)}
${car ? html`<p>For example: ${harmless(car.words)}</p>` : ""}
<p>→ ${harmless(hint)}</p></li>`;
}

/** The line with the fault marked in it. What is empty is marked by the place where something is missing. */
function marked(shown: string, at: number, length: number): Html {
  return html`${shown.slice(0, at)}<mark>${shown.slice(at, at + Math.max(1, length)) || " "}</mark>${shown.slice(at + Math.max(1, length))}`;
}
