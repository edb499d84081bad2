/**
 * From the files of a data folder to the catalog. Nothing is thrown at the first fault: every file is checked as far as
 * it can be, and all complaints come back at once. There is a catalog only when there is no error.
 */
import { echoOf } from "./broken-files.ts";
import type { Catalog } from "./catalog.ts";
import { checkShape } from "./check-shape.ts";
import { type Complaint, Complaints } from "./complaint.ts";
import { type DataFile, FILE_KINDS, type FileKindName, type ValueOf } from "./file-kinds.ts";
import { resolveBulletins } from "./resolve/bulletins.ts";
import { resolveComponents } from "./resolve/components.ts";
import { checkCautions, checkMoved, checkPlates } from "./resolve/lists.ts";
import { resolveParts } from "./resolve/parts.ts";
import { resolveRecords } from "./resolve/records.ts";
import { resolveSums } from "./resolve/sums.ts";
import { resolveTraits } from "./resolve/traits.ts";
import { resolveVehicles } from "./resolve/vehicles.ts";
import { maker as makerShape } from "./shapes/maker.ts";

/** A file whose shape holds, with the complaints that may still come. */
export interface Shaped<K extends FileKindName> {
  readonly path: string;
  readonly value: ValueOf<K>;
  readonly complaints: Complaints;
}

export interface ReadCatalog {
  readonly catalog: Catalog | undefined;
  readonly complaints: readonly Complaint[];
}

const NO_MAKER = makerShape.parse({
  name: "Unnamed maker",
  title: "Model changes",
  about: "Model changes.",
  site: "http://127.0.0.1/",
});

export function readCatalog(files: readonly DataFile[]): ReadCatalog {
  const all: Complaints[] = [];
  const shaped = <K extends FileKindName>(kind: K): Shaped<K>[] =>
    files.flatMap((file) => {
      if (file.kind !== kind || file.broken) return [];
      const complaints = new Complaints(file.path);
      all.push(complaints);
      const value = checkShape<unknown>(FILE_KINDS[kind].shape, file.value, complaints);
      return value === undefined ? [] : [{ path: file.path, value: value as ValueOf<K>, complaints }];
    });

  const folder = new Complaints("vehicles/traits.yaml");
  all.push(folder);
  const traits = shaped("traits");
  if (!files.some((file) => file.kind === "traits"))
    folder.error([], "the file is missing", "describe there by which traits cars differ; the README shows one");
  const space = resolveTraits(traits[0]);
  const systems = resolveComponents(shaped("system"));
  const parts = resolveParts(shaped("parts"), systems.components);
  const vehicles = resolveVehicles(shaped("vehicles"), space);
  const records = resolveRecords(shaped("change"), space, systems, parts.parts);
  parts.checkRecords(records);
  const bulletins = resolveBulletins(shaped("bulletin"), records, parts.parts, systems.components);
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

  const found = all.flatMap((one) => one.list);
  const wrong = new Set(found.map((complaint) => complaint.file));
  const broken = files.filter((file) => file.broken || wrong.has(file.path));
  const isEcho = echoOf(broken);
  const complaints = found.filter((complaint) => !isEcho(complaint));
  if (files.some((file) => file.broken) || complaints.some((complaint) => complaint.severity === "error"))
    return { catalog: undefined, complaints };
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
  return { catalog, complaints };
}
