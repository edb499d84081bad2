/** The frame round every page: head, navigation, breadcrumbs, foot. */
import { type Html, html, toText } from "./html.ts";
import type { Page } from "./page.ts";

export interface Crumb {
  readonly label: string;
  readonly address: string;
}

export interface FrameParts {
  readonly title: string;
  readonly description: string;
  /** The pages above this one, the home page left out. */
  readonly crumbs?: readonly Crumb[];
  readonly body: Html;
  /** Names of scripts in assets/ that this page runs beside the common one. */
  readonly scripts?: readonly string[];
  /** Names of style sheets in assets/ that this page needs beside the common one. */
  readonly styles?: readonly string[];
  /** The page runs WebAssembly (text search does). */
  readonly wasm?: boolean;
  /** Feeds of this page: title and address. */
  readonly feeds?: readonly Crumb[];
  /** The page has an ask box of its own, so the head shows none. */
  readonly ownAsk?: boolean;
  /** The page moved: browsers go there by themselves. */
  readonly movedTo?: string;
}

const NAVIGATION: readonly Crumb[] = [
  { label: "Ask", address: "/ask/" },
  { label: "This car", address: "/car/" },
  { label: "May it go on?", address: "/fit/" },
  { label: "Retrofit paths", address: "/retrofits/" },
  { label: "Settings", address: "/settings/" },
  { label: "Tell apart", address: "/apart/" },
  { label: "Shop sums", address: "/sums/" },
  { label: "Systems", address: "/systems/" },
  { label: "Lines", address: "/lines/" },
  { label: "Years", address: "/years/" },
  { label: "Records", address: "/records/" },
  { label: "Parts", address: "/parts/" },
  { label: "Bulletins", address: "/bulletins/" },
  { label: "Map", address: "/map/" },
];

export function frame(page: Page, parts: FrameParts): string {
  const { catalog } = page.site;
  const home: Crumb = { label: "Home", address: "/" };
  const title = page.address === "/" ? catalog.maker.title : `${parts.title} · ${catalog.maker.title}`;
  return toText(html`<!DOCTYPE html>
<html lang="${catalog.maker.language}">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy(parts.wasm ?? false)}">
<title>${title}</title>
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="description" content="${parts.description}">
<meta name="color-scheme" content="light dark">
${parts.movedTo && html`<meta http-equiv="refresh" content="0; url=${parts.movedTo}">`}
<link rel="canonical" href="${new URL(page.address.slice(1), catalog.maker.site).href}">
<link rel="icon" href="${page.href("/assets/icon.svg")}" type="image/svg+xml">
<link rel="stylesheet" href="${page.href("/assets/site.css")}">
${parts.styles?.map((name) => html`<link rel="stylesheet" href="${page.href(`/assets/${name}.css`)}">`)}
<link rel="alternate" type="application/atom+xml" title="All changes" href="${page.href("/feeds/all.xml")}">
${parts.feeds?.map((feed) => html`<link rel="alternate" type="application/atom+xml" title="${feed.label}" href="${page.href(feed.address)}">`)}
${parts.scripts?.map((name) => html`<script type="module" src="${page.href(`/assets/${name}.js`)}"></script>`)}
</head>
<body>
<a class="skip" href="#content">Skip to the content</a>
<header class="head">
<a class="brand" href="${page.href("/")}"><span class="mark" aria-hidden="true"></span>${catalog.maker.title}</a>
${
  parts.ownAsk
    ? ""
    : html`<form class="quick" role="search" action="${page.href("/ask/")}" method="get">
<label class="hidden" for="quick">Ask a question</label>
<input id="quick" name="q" type="search" placeholder="${page.site.exampleQuestion}" autocomplete="off" enterkeyhint="search">
<button type="submit">Ask</button>
</form>`
}
<nav class="nav" aria-label="Main">${NAVIGATION.map(
    ({ label, address }) =>
      html`<a href="${page.href(address)}"${page.address.startsWith(address) ? html` aria-current="${page.address === address ? "page" : "true"}"` : ""}>${label}</a>`,
  )}</nav>
</header>
${
  parts.crumbs &&
  html`<nav class="crumbs" aria-label="You are here"><ol>${[home, ...parts.crumbs].map(
    ({ label, address }) => html`<li><a href="${page.href(address)}">${label}</a></li>`,
  )}<li aria-current="page">${parts.title}</li></ol></nav>`
}
<main id="content" tabindex="-1">
${parts.body}
</main>
<footer class="foot">
${catalog.maker.notice && html`<p>${catalog.maker.notice}</p>`}
<p><a href="${page.href("/feeds/")}">Feeds</a> · <a href="${page.href("/data/")}">For machines</a></p>
</footer>
</body>
</html>
`);
}

/** Nothing is loaded from elsewhere and nothing on a page runs that is not one of the site's own files. */
export function policy(wasm: boolean): string {
  return [
    "default-src 'none'",
    `script-src 'self'${wasm ? " 'wasm-unsafe-eval'" : ""}`,
    "style-src 'self'",
    "img-src 'self' data:",
    "font-src 'self'",
    "connect-src 'self'",
    "form-action 'self'",
    "base-uri 'none'",
    "manifest-src 'self'",
    `worker-src 'self'`,
  ].join("; ");
}
