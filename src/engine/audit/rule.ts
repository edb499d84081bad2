/** A rule of the audit: what must hold for the records as a whole, and how to find where it does not. */
import type { PartIndex } from "../interchange/part-index.ts";
import type { Catalog } from "../records/catalog.ts";
import type { Place } from "../records/complaint.ts";
import type { ChecksFile } from "../records/shapes/checks.ts";
import type { CarSet } from "../scope/diagram.ts";

/** All that a rule looks at. */
export interface World {
  readonly catalog: Catalog;
  readonly index: PartIndex;
  readonly checks: ChecksFile;
}

/** Where a rule does not hold. */
export interface Fault {
  readonly at: Place;
  readonly message: string;
  /** How to mend it. */
  readonly hint: string;
  /** The records it comes from; the first is the one to look at first. */
  readonly records: readonly string[];
  /** What else it is about: parts, settings, places. An acceptance may name these and the records. */
  readonly names: readonly string[];
  /** What stands elsewhere and has to do with it. */
  readonly also?: readonly (Place & { readonly message: string })[];
  /** The built cars that show it. */
  readonly cars?: CarSet;
}

/** Files on top of a small folder of made-up tractors, changed piece by piece: what stands there, what stands there instead, and so on. */
export type ExampleFiles = Readonly<Record<string, readonly string[]>>;

/** A rule in words, for those who write the data. */
export interface RuleText {
  readonly id: string;
  readonly gravity: "error" | "warning";
  /** What must hold, in a sentence. */
  readonly about: string;
  /** What goes wrong at the car or the counter otherwise. */
  readonly why: string;
  /** How an editor mends it. */
  readonly mend: string;
  /** `wrong` is found, `right` is not; a test runs both. */
  readonly example: { readonly wrong: ExampleFiles; readonly right: ExampleFiles };
}

export interface Rule extends RuleText {
  readonly find: (world: World) => Iterable<Fault>;
}
