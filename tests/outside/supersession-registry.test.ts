/**
 * Superseded numbers judged from outside: language tags, which have been superseded for thirty years by a published table.
 *
 *   What is loaded: the IANA Language Subtag Registry (npm language-subtag-registry; the test prints its file date), as RFC 5646,
 *   BCP 47, lays it down. A deprecated tag is a part number, its Preferred-Value the number delivered for it. Where the registry
 *   names several ("see apf, prf"), it is a split.
 *   Who judges: Intl.getCanonicalLocales of Node, ECMA-402, which has its own table from Unicode CLDR (the test prints which).
 *
 * The two tables are kept by different people. Where they differ, it stands below by hand, with the reason, and the test fails when
 * one of these no longer differs.
 */
import { createRequire } from "node:module";
import { expect, test } from "vitest";
import { answerCurrent } from "../../src/engine/answers/answer-current.ts";
import { type Knowledge, openKnowledge } from "../../src/engine/answers/knowledge.ts";
import type { CurrentAnswer } from "../../src/engine/answers/shapes/current.ts";
import { readTexts, type Spoil, spoiled } from "../helpers/tiny-folder.ts";

interface Entry {
  readonly Type: "language" | "extlang" | "script" | "region" | "variant" | "grandfathered" | "redundant";
  readonly Subtag?: string;
  readonly Tag?: string;
  readonly Prefix?: readonly string[];
  readonly Deprecated?: string;
  readonly "Preferred-Value"?: string;
  readonly Comments?: readonly string[];
}

const require = createRequire(import.meta.url);
const REGISTRY: readonly Entry[] = require("language-subtag-registry/data/json/registry.json");
const DATE: string = require("language-subtag-registry/data/json/meta.json")["File-Date"];

/**
 * CLDR goes on where the registry stops: it has one tag for a macrolanguage and its chief member, which the registry
 * keeps apart. Loaded as a second record, so that these become chains of two rules.
 */
const FURTHER = {
  ...{ arb: "ar", cls: "sa", cmn: "zh", gom: "kok", khk: "mn", lvs: "lv", prs: "fa-AF", swc: "sw-CD", swh: "sw" },
  ...{ uzn: "uz", zsm: "ms", "cmn-Hans": "zh-Hans", "cmn-Hant": "zh-Hant" },
};

/**
 * ECMA-402 takes only what a Unicode locale identifier (UTS 35) can spell, and refuses these tags from before RFC 4646, which
 * follow no rule of spelling. What the registry prefers for them is all that the judge can be asked about.
 */
const REFUSED = [
  ...["en-GB-oed", "i-ami", "i-bnn", "i-hak", "i-klingon", "i-lux", "i-navajo", "i-pwn", "i-tao", "i-tay", "i-tsu"],
  ...["no-bok", "no-nyn", "sgn-BE-FR", "sgn-BE-NL", "sgn-CH-DE", "zh-min", "zh-min-nan"],
];

/**
 * For the same reason it refuses an extended language behind the language it is one of: zh-yue. RFC 5646, 4.5, has it stand alone
 * in the canonical form, and so the judge is asked about yue.
 */
const EXTENDED = /^[a-z]{2,3}-(?=[a-z]{3}(-|$))/;

/** CLDR 48 has no rule for these, two variants and the languages that the registry has split, and keeps them. */
const KEPT = [
  ...["sa-laukika", "sa-vaidika"],
  ...["bij", "cug", "gji", "ksa", "kxu", "lno", "mvm", "ngo", "plj", "sdm", "uun", "vki", "wra", "wya", "xtz", "zua"],
];

/** What a deprecated entry is as a whole tag, so that either side can be asked for it. */
function tagsOf({ Type, Subtag = "", Tag = "", Prefix = [] }: Entry): string[] {
  if (Type === "grandfathered" || Type === "redundant") return [Tag];
  if (Type === "extlang" || Type === "variant") return Prefix.map((prefix) => `${prefix}-${Subtag}`);
  return [Type === "region" ? `und-${Subtag}` : Subtag];
}

/** What the registry has for it today: one tag, or several where it was split, or nothing. */
function preferredOf(entry: Entry): string[] {
  const comments = (entry.Comments ?? []).join(" ");
  if (entry.Type === "variant") return /Preferred tag is (\S+)/.exec(comments)?.slice(1) ?? [];
  const preferred = entry["Preferred-Value"];
  if (preferred !== undefined) return [entry.Type === "region" ? `und-${preferred}` : preferred];
  if (entry.Deprecated === undefined || !comments.startsWith("see ")) return [];
  const codes = comments.slice(4).match(entry.Type === "region" ? /\b[A-Z]{2}\b/g : /\b[a-z]{3}\b/g) ?? [];
  return entry.Type === "region" ? codes.map((code) => `und-${code}`) : codes;
}

/** By old tag the tags preferred; a tag that two entries speak of must be said to be the same by both. */
function readRegistry(): Map<string, string[]> {
  const rules = new Map<string, string[]>();
  for (const entry of REGISTRY) {
    const preferred = preferredOf(entry);
    if (preferred.length === 0) continue;
    for (const old of tagsOf(entry)) {
      expect(rules.get(old) ?? preferred, old).toEqual(preferred);
      rules.set(old, preferred);
    }
  }
  return rules;
}

interface Rule {
  readonly old: string;
  readonly new: string;
  readonly scope?: string;
}

/** A change record as a maker's folder has it; YAML reads JSON. */
function recordOf(id: string, rules: readonly Rule[]): string {
  return `---
id: ${id}
title: Numbers superseded
issued: ${DATE}
kinds: [part]
starts: x
scope: all
supersedes: ${JSON.stringify(rules)}
---

x
`;
}

/** The tiny folder with tags for parts, read as any data folder is. */
function open(records: Readonly<Record<string, readonly Rule[]>>, spoil: Spoil = {}): Knowledge {
  const rules = Object.values(records).flat();
  const tags = [...new Set(rules.flatMap((rule) => [rule.old, rule.new]))];
  const year = DATE.slice(0, 4);
  const { catalog, complaints } = readTexts(
    spoiled({
      ...spoil,
      "parts/lift.yaml": `component: lift\nparts: ${JSON.stringify(tags.map((number) => ({ number, name: "tag" })))}\n`,
      ...Object.fromEntries(
        Object.entries(records).map(([id, own]) => [`changes/${year}/${id}.md`, recordOf(id, own)]),
      ),
    }),
  );
  expect(complaints).toEqual([]);
  if (!catalog) throw new Error("the folder was not read");
  return openKnowledge(catalog, { layout: false });
}

const PUBLISHED = readRegistry();
const IANA = [...PUBLISHED].flatMap(([old, preferred]) => preferred.map((tag): Rule => ({ old, new: tag })));
const CLDR = Object.entries(FURTHER).map(([old, tag]): Rule => ({ old, new: tag }));
const knowledge = open({ IANA, CLDR });
const single = [...PUBLISHED].flatMap(([old, [tag, ...others]]) => (tag && others.length === 0 ? [{ old, tag }] : []));
const split = [...PUBLISHED].flatMap(([old, tags]) => (tags.length > 1 ? [{ old, tags }] : []));
console.log(`IANA Language Subtag Registry of ${DATE}, judged by Unicode CLDR ${process.versions.cldr}`);

function ask(part: string, of = knowledge, facts = {}): CurrentAnswer {
  return answerCurrent(of, { part, car: { facts } });
}

function endsOf({ currents }: CurrentAnswer): string[] {
  return [...new Set(currents.map((it) => it.part))].sort();
}

/** Each number on the way, for an answer with one way only. */
function wayOf(answer: CurrentAnswer): string {
  expect(answer.currents.length).toBe(1);
  const records = answer.currents[0]?.steps.map((step) => step.record) ?? [];
  return [...answer.asked, ...records, ...answer.order].join(" ");
}

/** The judge's answer; nothing where it refuses the tag. */
function judged(tag: string): string | undefined {
  try {
    return Intl.getCanonicalLocales(tag)[0];
  } catch {
    return undefined;
  }
}

test("who orders a deprecated tag gets the one that the judge has for it", () => {
  const counts = { asked: 0, extended: 0, refused: 0, kept: 0 };
  for (const { old, tag } of single) {
    const answer = ask(old);
    const isRefused = REFUSED.includes(old);
    const isExtended = !isRefused && EXTENDED.test(old);
    expect(judged(old) === undefined, old).toBe(isRefused || isExtended);
    const isKept = KEPT.includes(old);
    expect(judged(old) === old, old).toBe(isKept);
    const expected = judged(isRefused || isKept ? tag : old.replace(isExtended ? EXTENDED : "", ""));
    expect([old, answer.verdict, ...answer.order]).toEqual([old, "superseded", expected]);
    counts[isRefused ? "refused" : isExtended ? "extended" : isKept ? "kept" : "asked"]++;
  }
  console.log(`deprecated for one: ${JSON.stringify(counts)}`);
  expect(counts.asked).toBeGreaterThan(130);
  expect(counts.extended).toBeGreaterThan(250);
});

test("of a tag that was split all are named, with no default, and the judge takes one of them", () => {
  const counts = { asked: 0, refused: 0, kept: 0, merged: 0 };
  for (const { old, tags } of split) {
    const answer = ask(old);
    // Where the registry has split a tag and later gave up all but one of them, the answer is that one.
    const ends = [...new Set(tags.map((tag) => (PUBLISHED.get(tag) ?? [tag])[0] as string))].sort();
    const isOne = ends.length === 1;
    expect([old, answer.verdict, endsOf(answer), answer.order]).toEqual([
      ...[old, isOne ? "superseded" : "look first", ends, isOne ? ends : []],
    ]);
    const one = judged(old);
    expect(one === undefined, old).toBe(REFUSED.includes(old));
    expect(one === old, old).toBe(KEPT.includes(old));
    if (one !== undefined && one !== old) expect(ends, old).toContain(one);
    if (isOne) counts.merged++;
    counts[one === undefined ? "refused" : one === old ? "kept" : "asked"]++;
  }
  console.log(`deprecated for several: ${JSON.stringify(counts)}`);
  expect(counts.asked).toBeGreaterThan(50);
});

test("a tag preferred is current, and the judge keeps it", () => {
  const ends = [...new Set([...PUBLISHED.keys()].flatMap((old) => endsOf(ask(old))))];
  for (const end of ends) {
    const answer = ask(end);
    expect([end, answer.verdict, ...answer.order, judged(end)]).toEqual([end, "current", end, end]);
  }
  console.log(`current: ${ends.length}`);
  expect(ends.length).toBeGreaterThan(400);
});

test("each rule of the second record is one that the judge follows, and the registry alone stops before it", () => {
  const alone = open({ IANA });
  const differ = single.flatMap(({ old, tag }) => (ask(old, alone).order[0] === ask(old).order[0] ? [] : [[old, tag]]));
  for (const rule of CLDR) expect([rule.old, judged(rule.old)]).toEqual([rule.old, rule.new]);
  expect([...new Set(differ.map(([, tag]) => tag))].sort()).toEqual(CLDR.map((rule) => rule.old).sort());
});

test("chains are followed rule by rule, each with its record", () => {
  const chains = single.map(({ old }) => ask(old)).filter((answer) => (answer.currents[0]?.steps.length ?? 0) > 1);
  // Asked, the records of the rules, and what is delivered. Only one needs both its rules from the registry itself.
  expect(chains.map(wayOf)).toEqual([
    "drh IANA CLDR mn",
    "drw IANA CLDR fa-AF",
    "tnf IANA CLDR fa-AF",
    "ar-ajp IANA IANA apc",
    "ar-arb IANA CLDR ar",
    "zh-cmn IANA CLDR zh",
    "kok-gom IANA CLDR kok",
    "lv-lvs IANA CLDR lv",
    "sw-swc IANA CLDR sw-CD",
    "sw-swh IANA CLDR sw",
    "uz-uzn IANA CLDR uz",
    "ms-zsm IANA CLDR ms",
    "sa-laukika IANA CLDR sa",
    "zh-guoyu IANA CLDR zh",
    "zh-cmn-Hans IANA CLDR zh-Hans",
    "zh-cmn-Hant IANA CLDR zh-Hant",
  ]);
});

/**
 * The country SU was split, and CLDR takes the one where the language of the tag is at home (UTS 35, territory aliases). So the
 * language is a trait of the car here, and every rule has it for its scope.
 */
const AT_HOME = [
  ...[
    "hy-AM",
    "az-AZ",
    "be-BY",
    "et-EE",
    "ka-GE",
    "kk-KZ",
    "ky-KG",
    "lv-LV",
    "lt-LT",
    "ru-RU",
    "tg-TJ",
    "tk-TM",
    "uk-UA",
  ],
  "uz-UZ",
].map((tag) => ({ tag, tongue: tag.slice(0, 2), country: `und-${tag.slice(3)}` }));

test("a split within scopes is settled by the trait that they ask about", () => {
  const tongues = AT_HOME.map(({ tongue }) => ({ id: tongue, label: tongue }));
  const trait = `  - { id: tongue, kind: list, label: tongue, find: the voice, effort: 1, phrase: "speaking {}", otherwise: "not speaking {}", values: ${JSON.stringify(tongues)} }\n`;
  const SU = AT_HOME.map(({ tongue, country }): Rule => ({ old: "und-SU", new: country, scope: `tongue=${tongue}` }));
  const own = open({ SU }, { "vehicles/traits.yaml": ["  - { id: WN,", `${trait}  - { id: WN,`] });
  for (const { tag, tongue, country } of AT_HOME) {
    const { verdict, order } = ask("und-SU", own, { tongue });
    expect([tongue, verdict, ...order]).toEqual([tongue, "superseded", country]);
    expect(judged(`${tongue}-SU`)).toBe(tag);
  }
  const two = ask("und-SU", own, { tongue: ["hy", "ru"] });
  expect([two.verdict, two.order, two.ask?.trait, endsOf(two)]).toEqual([
    ...["look first", [], "tongue", ["und-AM", "und-RU"]],
  ]);
  expect(endsOf(ask("und-SU", own)).length).toBe(AT_HOME.length);
});

test("there is no circle in the registry; one slip in it is reported as one, and nothing else changes", () => {
  const all = [...PUBLISHED.keys()];
  expect(all.filter((old) => ask(old).verdict === "circle")).toEqual([]);
  // The end of a chain leads back to its start, and one half of a split back to what was split.
  const SLIP: Rule[] = [
    { old: "mn", new: "drh" },
    { old: "nvo", new: "baz" },
  ];
  const slipped = open({ IANA, CLDR, SLIP });
  const { verdict, order, currents } = ask("drh", slipped);
  expect([verdict, order, currents.map((it) => [it.part, it.circle, it.steps.length])]).toEqual([
    ...["circle", [], [["mn", true, 2]]],
  ]);
  const half = ask("baz", slipped);
  expect([half.verdict, half.order, half.currents.map((it) => [it.part, it.circle])]).toEqual([
    "circle",
    [],
    [
      ["nvo", true],
      ["tvu", false],
    ],
  ]);
  const changed = all.filter((old) => ask(old, slipped).words !== ask(old).words);
  expect(changed.sort()).toEqual(["baz", "drh"]);
});
