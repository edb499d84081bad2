/**
 * From the files of a data folder to the catalog. Nothing is thrown at the first fault: every file is checked as far as
 * it can be, and all complaints come back at once. There is a catalog only when there is no error.
 */
import { echoOf } from "./broken-files.ts";
import type { Catalog } from "./catalog.ts";
import { checkShape } from "./check-shape.ts";
import { type Complaint, Complaints, type Path } from "./complaint.ts";
import { type DataFile, FILE_KINDS, type FileKindName, type ValueOf } from "./file-kinds.ts";
import { asksWhatIsFitted, isFresh, type Kept, sameItems } from "./kept.ts";
import { resolveBulletins } from "./resolve/bulletins.ts";
import { checkGoesBy, resolveComponents } from "./resolve/components.ts";
import { checkCautions, checkMoved, checkPlates } from "./resolve/lists.ts";
import { resolveParts } from "./resolve/parts.ts";
import { resolveRecords } from "./resolve/records.ts";
import { resolveSums } from "./resolve/sums.ts";
import { resolveTraits } from "./resolve/traits.ts";
import { resolveVehicles } from "./resolve/vehicles.ts";
import type { ChecksFile } from "./shapes/checks.ts";
import { maker as makerShape } from "./shapes/maker.ts";
import { withoutVainCancels } from "./vain-cancels.ts";

/** A file whose shape holds, with the complaints that may still come. */
export interface Shaped<K extends FileKindName> {
  readonly path: string;
  readonly value: ValueOf<K>;
  readonly complaints: Complaints;
}

/** What an editor accepts in a file as it stands. */
export interface Acceptance {
  readonly file: string;
  readonly path: Path;
  /** The id of the check. */
  readonly check: string;
  /** Only findings that name all of these. */
  readonly about: readonly string[];
  readonly why: string;
}

export interface ReadCatalog {
  readonly catalog: Catalog | undefined;
  readonly complaints: readonly Complaint[];
  /** How the checks of the whole are set. */
  readonly checks: ChecksFile;
  readonly acceptances: readonly Acceptance[];
  /** For a later reading of nearly the same files; nothing where there was an error. */
  readonly kept: Kept | undefined;
}

const NO_CHECKS: ChecksFile = { rules: [], plausible: [], "never-say": [] };

/** Stands where no maker.yaml says at which address the site is published. */
export const NO_SITE = "http://127.0.0.1/";

const NO_MAKER = makerShape.parse({
  name: "Unnamed maker",
  title: "Model changes",
  about: "What changed, on which cars, and what follows from it.",
  site: NO_SITE,
});

/** By what a file says: what its shape makes of it. Whoever reads a folder again after one file changed has this of all others. */
const shapesKnown = new WeakMap<
  object,
  { readonly file: DataFile; readonly value: unknown; readonly said: Complaint[] }
>();

/**
 * With what was `kept` of an earlier reading, the answer is the same and comes sooner. What is taken over of it had no fault then,
 * and is taken over only where all that it was made from is the same object as then.
 */
export function readCatalog(files: readonly DataFile[], kept?: Kept): ReadCatalog {
  const asking = files.filter(asksWhatIsFitted).map(({ value }) => value);
  const before = kept && isFresh(kept, asking) ? kept : undefined;
  const isSame = (kind: FileKindName, now: readonly { readonly value: unknown }[]): boolean => {
    const then = before?.values.get(kind);
    return (
      then !== undefined &&
      sameItems(
        now.map(({ value }) => value),
        then,
      )
    );
  };
  const all: Complaints[] = [];
  const shaped = <K extends FileKindName>(kind: K): Shaped<K>[] =>
    files.flatMap((file) => {
      if (file.kind !== kind || file.broken) return [];
      const complaints = new Complaints(file.path);
      all.push(complaints);
      const value = shapeOnce(file, complaints);
      return value === undefined ? [] : [{ path: file.path, value: value as ValueOf<K>, complaints }];
    });

  const folder = new Complaints("vehicles/traits.yaml");
  all.push(folder);
  const traits = shaped("traits");
  if (!files.some((file) => file.kind === "traits"))
    folder.error([], "the file is missing", "describe there by which traits cars differ; the README shows one", {
      rule: "missing-file",
    });
  const space = isSame("traits", traits) && before ? before.space : resolveTraits(traits[0]);
  const isSameSpace = space === before?.space;
  const systemFiles = shaped("system");
  const systems = isSame("system", systemFiles) && before ? before.systems : resolveComponents(systemFiles);
  checkGoesBy(systemFiles, space);
  const partFiles = shaped("parts");
  const parts = resolveParts(partFiles, systems.components);
  const vehicleFiles = shaped("vehicles");
  const vehicles =
    isSameSpace && isSame("vehicles", vehicleFiles) && before ? before.vehicles : resolveVehicles(vehicleFiles, space);
  const changes = shaped("change");
  const isSameWorld = isSameSpace && systems === before?.systems && isSame("parts", partFiles);
  const resolved = resolveRecords(changes, space, systems, parts.parts, isSameWorld ? before?.records : undefined);
  const records = withoutVainCancels(resolved);
  parts.checkRecords(records);
  const bulletinFiles = shaped("bulletin");
  const bulletins = resolveBulletins(bulletinFiles, records, parts.parts, systems.components);
  const cautions = checkCautions(shaped("cautions")[0], systems);
  const plates = checkPlates(shaped("plates")[0], space);
  const moved = checkMoved(shaped("moved")[0], {
    record: records,
    part: parts.parts,
    component: systems.components,
    system: systems.systemsById,
    bulletin: bulletins,
  });
  const sums = resolveSums(shaped("sums")[0], { records, components: systems.components, parts: parts.parts });
  const words = shaped("words")[0]?.value ?? { ignore: [], plain: [], mean: [] };
  const maker = shaped("maker")[0]?.value ?? NO_MAKER;
  const checks = shaped("checks")[0]?.value ?? NO_CHECKS;
  const acceptances = [...systemFiles, ...partFiles, ...changes, ...bulletinFiles].flatMap(({ path: file, value }) =>
    value.accept.map((it, i): Acceptance => ({ ...it, file, path: ["accept", i] })),
  );

  const found = all.flatMap((one) => one.list);
  const wrong = new Set(found.map((complaint) => complaint.file));
  const broken = files.filter((file) => file.broken || wrong.has(file.path));
  const isEcho = echoOf(broken);
  const complaints = found.filter((complaint) => !isEcho(complaint));
  if (files.some((file) => file.broken) || complaints.some((complaint) => complaint.severity === "error"))
    return { catalog: undefined, complaints, checks, acceptances, kept: undefined };
  const catalog: Catalog = {
    maker,
    space,
    ...vehicles,
    systems: systems.systems,
    components: systems.components,
    places: systems.places,
    parts: parts.parts,
    relatives: new Map(),
    records,
    bulletins,
    cautions,
    plates,
    moved,
    sums,
    words,
  };
  const valuesOf = (shapedFiles: readonly { readonly value: unknown }[]): unknown[] =>
    shapedFiles.map((it) => it.value);
  const values = new Map<FileKindName, unknown[]>([
    ["traits", valuesOf(traits)],
    ["system", valuesOf(systemFiles)],
    ["parts", valuesOf(partFiles)],
    ["vehicles", valuesOf(vehicleFiles)],
    ["change", valuesOf(changes)],
  ]);
  return {
    ...{ catalog, complaints, checks, acceptances },
    kept: { values, space, traits: space.traits.length, asking, systems, vehicles, records: resolved },
  };
}

/** The file's value in its shape, or nothing and complaints. Looked at again only when the value is another object than before. */
function shapeOnce(file: DataFile, complaints: Complaints): unknown {
  const key = typeof file.value === "object" && file.value !== null ? file.value : undefined;
  const known = key && shapesKnown.get(key);
  if (known && known.file.path === file.path && known.file.kind === file.kind) {
    complaints.list.push(...known.said);
    return known.value;
  }
  const value = checkShape<unknown>(FILE_KINDS[file.kind].shape, file.value, complaints);
  if (key) shapesKnown.set(key, { file, value, said: [...complaints.list] });
  return value;
}
