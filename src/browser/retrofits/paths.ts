/** The open ways with all that goes along, and the closed ones with what closes them, by system. */
import { html, nothing, type TemplateResult } from "lit-html";
import type { RetrofitsAnswer } from "../../engine/answers/shapes/retrofits.ts";
import type { System } from "../../engine/records/catalog.ts";
import { copyOrder } from "../at-hand/copy-order.ts";
import type { AtHand } from "../at-hand/page.ts";
import { partLink, reasonView } from "../fit/view/reason.ts";

type Path = RetrofitsAnswer["paths"][number];
type Blocked = RetrofitsAnswer["blocked"][number];

export function pathsView(
  hand: AtHand,
  { paths, blocked }: { readonly paths: readonly Path[]; readonly blocked: readonly Blocked[] },
): TemplateResult {
  const ways = together(paths);
  const open = bySystem(hand, ways);
  return html`
    <section aria-labelledby="open-ways">
      <h2 id="open-ways">Open ways: ${ways.length}</h2>
      ${ways.length === 0 ? html`<p class="none">No record permits one. That a way is not on record is never a yes.</p>` : nothing}
      ${open.length > 1 ? html`<ul class="jump" aria-label="Systems">${open.map(({ system, items }) => html`<li><a href="#ways-${system.id}" @click=${stay}>${system.name}</a> ${items.length}</li>`)}</ul>` : nothing}
      ${open.map(({ system, items }) => html`<h3 id="ways-${system.id}" tabindex="-1">${system.name}</h3><ul class="ways">${items.map((it) => html`<li>${pathView(hand, it)}</li>`)}</ul>`)}
    </section>
    <section aria-labelledby="closed-ways">
      <h2 id="closed-ways">Closed ways: ${blocked.length}</h2>
      ${blocked.length === 0 ? html`<p class="none">No record closes one.</p>` : nothing}
      ${bySystem(hand, blocked).map(({ system, items }) => html`<h3>${system.name}</h3><ul class="ways">${items.map((it) => html`<li>${blockedView(hand, it)}</li>`)}</ul>`)}
    </section>`;
}

/** To the heading, without a new address: that would be another question. */
function stay(event: Event): void {
  event.preventDefault();
  const [, id = ""] = (event.currentTarget as HTMLAnchorElement).href.split("#");
  const heading = document.getElementById(id);
  heading?.scrollIntoView();
  heading?.focus({ preventScroll: true });
}

export interface OneWay extends Path {
  /** The same set of parts, asked for by another of them, at another place, or in place of another part. */
  readonly others: readonly Path[];
}

/** Ways by which the same parts go on are one: first of all one that holds for every car that this can be. */
export function together(paths: readonly Path[]): OneWay[] {
  const same = Map.groupBy(paths, ({ set }) => JSON.stringify(set.map((it) => it.part).sort()));
  return [...same.values()].map((its) => {
    const first = (its.find((it) => it.certain) ?? its[0]) as Path;
    return { ...first, others: its.filter((it) => it !== first) };
  });
}

interface OfSystem<T> {
  readonly system: System;
  readonly items: readonly T[];
}

function bySystem<T extends { readonly part: string }>(hand: AtHand, items: readonly T[]): OfSystem<T>[] {
  const catalog = hand.line?.knowledge.catalog;
  const systemOf = ({ part }: T): string | undefined => {
    const component = catalog?.parts.get(part)?.component;
    return component === undefined ? undefined : catalog?.components.get(component)?.system;
  };
  return (catalog?.systems ?? [])
    .map((system) => ({ system, items: items.filter((it) => systemOf(it) === system.id) }))
    .filter((group) => group.items.length > 0);
}

/** The part; below it "front: in place of 30-2; yes". The name of the place is left out where it is that of the part. */
function heading(it: Path | Blocked): TemplateResult {
  return html`<b><span class="id">${it.part}</span> ${it.name}</b> <span class="note">${whereWords(it)}</span>`;
}

function whereWords(it: Path | Blocked): string {
  const at = it.place === undefined || it.place === it.name ? "" : `${it.place}: `;
  const instead =
    it.instead === "nothing"
      ? "where the car has nothing"
      : it.instead === "not on record"
        ? "where it is not on record what belongs"
        : `in place of ${it.instead}`;
  return `${at}${instead}; ${it.verdict}${it.certain ? "" : ", on some of the cars that this can be"}`;
}

function otherView(hand: AtHand, it: Path, first: Path): TemplateResult {
  const name =
    it.part === first.part
      ? nothing
      : html`asked as <a class="id" href=${hand.hrefWithCar("fit/", { part: it.part })}>${it.part}</a> ${it.name}, `;
  return html`<p class="note">Also ${name}${whereWords(it)}.</p>`;
}

function pathView(hand: AtHand, it: OneWay): TemplateResult {
  const all = [it, ...it.others];
  const work = [...new Set(all.flatMap((one) => one.do))];
  const reset = [...new Set(all.flatMap((one) => one.reset))];
  const because = [
    ...new Map(all.flatMap((one) => one.because).map((reason) => [`${reason.record} ${reason.text}`, reason])).values(),
  ];
  const lines = it.set.map((one) => `${one.part} ${one.name}`);
  return html`<details><summary>${heading(it)}</summary>
    ${it.certain ? nothing : html`<p class="look">Not for every car that this can be. <a href=${hand.hrefWithCar("fit/", { part: it.part })}>What to look at</a></p>`}
    <p>All that goes on:</p><ol>${it.set.map((one) => html`<li>${partLink(hand, one.part)} ${one.name}</li>`)}</ol>
    ${it.others.map((other) => otherView(hand, other, it))}
    ${work.length > 0 ? html`<p>To do: ${work.join("; ")}.</p>` : nothing}
    ${reset.length > 0 ? html`<p>To set anew: ${reset.join("; ")}.</p>` : nothing}
    <ul>${because.map((reason) => html`<li>${reasonView(hand, reason)}</li>`)}</ul>
    <p class="choices"><a href=${hand.hrefWithCar("fit/", { part: it.part })}>The whole answer for ${it.part}</a>
      <button type="button" class="plain" @click=${(event: Event) => copyOrder(event, lines)}>Copy the order<span class="hidden"> of ${it.part}</span></button> <span role="status"></span></p>
    </details>`;
}

function blockedView(hand: AtHand, it: Blocked): TemplateResult {
  return html`<details><summary>${heading(it)}</summary>
    <ul>${it.because.map((reason) => html`<li>${reasonView(hand, reason)}</li>`)}</ul>
    <p><a href=${hand.hrefWithCar("fit/", { part: it.part })}>The whole answer for ${it.part}</a></p></details>`;
}
