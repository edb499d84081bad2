/** Everything a data folder says, with every name followed to what it names. All answers are asked of this. */
import type { CarSet } from "../scope/diagram.ts";
import type { Scope } from "../scope/scope.ts";
import type { Space } from "../scope/space.ts";
import type { BulletinFile } from "./shapes/bulletin.ts";
import type { ChangeFile } from "./shapes/change.ts";
import type { CautionsFile } from "./shapes/components.ts";
import type { MakerFile } from "./shapes/maker.ts";
import type { PartsFile } from "./shapes/parts.ts";
import type { SumJob } from "./shapes/sums.ts";
import type { PlatesFile } from "./shapes/vehicles.ts";
import type { MovedFile, WordsFile } from "./shapes/words.ts";
import type { Statement } from "./statement.ts";
import type { KINDS } from "./terms.ts";

export type Kind = (typeof KINDS)[number];

export interface Line {
  readonly id: string;
  readonly name: string;
  readonly class: string | undefined;
  readonly about: string | undefined;
  /** The cars of this line that were built. */
  readonly cars: CarSet;
}

export interface System {
  readonly id: string;
  readonly name: string;
  readonly order: number;
  readonly aliases: readonly string[];
  readonly components: readonly Component[];
}

export interface Component {
  readonly id: string;
  readonly name: string;
  readonly aliases: readonly string[];
  readonly system: string;
  readonly under: string | undefined;
  readonly places: readonly string[];
  /** The trait by which its own parts go, where the file says so. */
  readonly "goes-by"?: string | undefined;
}

/** A mark by which the parts of one component are told apart. */
export type Feature = PartsFile["features"][number];

export interface Part extends Readonly<PartsFile["parts"][number]> {
  readonly component: string;
  readonly features: readonly Feature[];
}

export interface ChangeRecord {
  readonly id: string;
  readonly file: string;
  /** The facts as the editor wrote them. */
  readonly facts: ChangeFile;
  readonly scope: Scope;
  readonly components: readonly Component[];
  /** The systems of its components, main one first. */
  readonly systems: readonly string[];
  /** Everything the record states, in the order in which it states it. */
  /** What it states; nothing once it is withdrawn, so that no answer rests on it. */
  readonly statements: readonly Statement[];
  /** What it states or, withdrawn, stated: for its own page, which stays. */
  readonly stated: readonly Statement[];
}

export interface Citation {
  readonly id: string;
  readonly words: string | undefined;
  readonly from: number;
  readonly to: number;
}

export interface Bulletin {
  readonly id: string;
  readonly file: string;
  readonly facts: BulletinFile;
  readonly citations: readonly Citation[];
}

export type Caution = CautionsFile["cautions"][number];
export type Plate = PlatesFile["plates"][number];
export type Move = MovedFile["moved"][number];

export interface Catalog {
  readonly maker: MakerFile;
  readonly space: Space;
  /** Every car that was built. */
  readonly buildable: CarSet;
  readonly lines: readonly Line[];
  readonly years: readonly number[];
  readonly systems: readonly System[];
  readonly components: ReadonlyMap<string, Component>;
  /** Which component a place belongs to. */
  readonly places: ReadonlyMap<string, Component>;
  readonly parts: ReadonlyMap<string, Part>;
  /** Where a page has the records of one line only: parts of the same components that these do not name. */
  readonly relatives: ReadonlyMap<string, Part>;
  readonly records: ReadonlyMap<string, ChangeRecord>;
  readonly bulletins: ReadonlyMap<string, Bulletin>;
  readonly cautions: readonly Caution[];
  readonly plates: readonly Plate[];
  readonly moved: readonly Move[];
  /** Shop sums with the figures of the records. */
  readonly sums: readonly SumJob[];
  readonly words: WordsFile;
}
