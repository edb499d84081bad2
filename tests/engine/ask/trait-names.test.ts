import { describe, expect, test } from "vitest";
import { traitNames } from "../../../src/engine/ask/trait-names.ts";
import { Space } from "../../../src/engine/scope/space.ts";
import type { Trait } from "../../../src/engine/scope/trait.ts";
import { demoKnowledge } from "../../helpers/demo-data.ts";
import { TRACTOR_TRAITS, tractorSpace } from "../../helpers/tractor-space.ts";

describe("what a tractor's traits are called", () => {
  const names = traitNames(tractorSpace());
  const said = (id: string, label?: string): string[] | undefined =>
    names.find((name) => name.id === id && (label === undefined || name.label === label))?.say;

  test("is a chip for a trait, whatever it is", () => {
    expect(new Set(names.map(({ kind }) => kind))).toEqual(new Set(["trait"]));
  });

  test("leaves out line and year, which have chips of their own, and numbers and dates, which are read off a plate", () => {
    expect([...new Set(names.map(({ id }) => id.split("=")[0]))]).toEqual(["plant", "fuel", "PT", "WN", "repainted"]);
  });

  test("for a value: its label, its aliases, and id and label beside the name of the trait", () => {
    expect(said("fuel=petrol")).toEqual(["petrol", "gasoline", "petrol fuel", "fuel petrol", "petrol fuel"]);
    expect(said("plant=D2")).toEqual(["Dunmoor", "D2 plant", "plant D2", "Dunmoor plant"]);
  });

  test("for a yes/no trait: its label and its aliases, for its being there", () => {
    expect(said("PT=yes")).toEqual(["power take-off", "pto"]);
    expect(said("WN=yes")).toEqual(["winch"]);
    expect(said("WN=no")).toBeUndefined();
  });

  test("for several values: a word that stands in the labels of some and not of all", () => {
    const oil = names.filter(({ say }) => say.includes("oil"));
    expect(oil).toEqual([
      { kind: "trait", id: "fuel=diesel", label: "diesel oil", say: ["oil", "oil fuel"] },
      { kind: "trait", id: "fuel=tvo", label: "vaporising oil", say: ["oil", "oil fuel"] },
    ]);
    expect(names.filter(({ say }) => say.includes("diesel"))).toEqual([]);
  });

  const labelled = (labels: readonly string[], label = "gear", aliases: string[] = []): Space =>
    new Space([
      {
        ...(TRACTOR_TRAITS.find(({ id }) => id === "fuel") as Trait),
        id: "gear",
        label,
        aliases,
        values: labels.map((text, i) => ({ id: `v${i}`, label: text, aliases: [] })),
      } as Trait,
    ]);
  const groups = (...labels: string[]): string[] =>
    traitNames(labelled(labels))
      .filter(({ say }) => !labels.includes(say[0] as string))
      .map(({ id, say }) => `${id} ${say[0]}`);

  test("but no word that stands in one label, in all, or in the name of a trait", () => {
    expect(groups("long shaft", "short shaft")).toEqual([]); // in all
    expect(groups("long shaft", "short belt")).toEqual([]); // each in one
    expect(groups("long shaft", "short shaft", "belt")).toEqual(["gear=v0 shaft", "gear=v1 shaft"]);
    expect(groups("long gears", "short gears", "belt")).toEqual([]); // the trait's own name
    expect(groups("six", "six", "four")).toEqual([]); // the whole label is said already
  });

  test("but no word that another trait is called by", () => {
    const space = new Space([
      ...TRACTOR_TRAITS.filter(({ id }) => id === "WN"),
      ...labelled(["winch shaft", "winch belt", "none"]).declared,
    ]);
    expect(
      traitNames(space)
        .filter(({ say }) => say[0] === "winch")
        .map(({ id }) => id),
    ).toEqual(["WN=yes"]);
  });

  test("without 'the', and a number beside the name of the trait", () => {
    const of = (label: string) => traitNames(labelled([label, "other"]))[0];
    expect(of("the long shaft")).toMatchObject({ label: "long shaft", say: expect.arrayContaining(["long shaft"]) });
    expect(of("400")).toMatchObject({ label: "400 gear", say: expect.arrayContaining(["400", "400 gear"]) });
    expect(of("constructor")?.say).toContain("constructor");
  });

  test("but no bare number of two figures, which may be a year, and no single letter", () => {
    const said = (label: string) => traitNames(labelled([label, "other"]))[0]?.say;
    for (const label of ["4", "59", "x"]) {
      expect(said(label)).not.toContain(label);
      expect(said(label)).toContain(`${label} gear`);
    }
    expect(groups("4 long", "4 short", "belt")).toEqual([]);
    expect(groups("400 long", "400 short", "belt")).toEqual(["gear=v0 400", "gear=v1 400"]);
  });

  test("with every alias of the trait, too", () => {
    const [first] = traitNames(labelled(["long", "short"], "gear", ["ratio", "box"]));
    expect(first?.say).toEqual(
      expect.arrayContaining(["v0 gear", "gear v0", "long gear", "v0 ratio", "ratio v0", "long box"]),
    );
  });

  test("of no trait is nothing", () => {
    expect(traitNames(new Space([]))).toEqual([]);
  });
});

test("every name of the data folder's traits is a fact that a car may have", async () => {
  const { space } = (await demoKnowledge()).catalog;
  const values = new Set(
    space.declared.flatMap((trait) =>
      trait.kind === "flag"
        ? [`${trait.id}=yes`]
        : trait.kind === "list"
          ? trait.values.map(({ id }) => `${trait.id}=${id}`)
          : [],
    ),
  );
  const names = traitNames(space);
  expect(names.filter(({ id }) => !values.has(id))).toEqual([]);
  expect(names.filter(({ label, say }) => label === "" || say.some((said) => said.trim() === ""))).toEqual([]);
});
