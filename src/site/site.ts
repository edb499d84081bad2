/** What the page templates are given: the knowledge behind all answers, and lists in the order in which pages show them. */
import type { Knowledge } from "../engine/answers/knowledge.ts";
import { address } from "../engine/graph/node.ts";
import type {
  Bulletin,
  Catalog,
  ChangeRecord,
  Component,
  Line,
  Move,
  Part,
  System,
} from "../engine/records/catalog.ts";
import { begins, beginsOnLine, yearsOf, yearsOnLine } from "../engine/records/concerned.ts";
import { once } from "../engine/records/once.ts";
import { statementsOf } from "../engine/records/statement.ts";

export interface LineYear {
  readonly line: Line;
  readonly year: number;
  /** Records that are new with this year on this line. */
  readonly fresh: readonly ChangeRecord[];
  /** Records from earlier years with cars of this year in their scope. */
  readonly older: readonly ChangeRecord[];
}

export interface Feed {
  readonly title: string;
  readonly address: string;
  /** The page that the feed is about. */
  readonly page: string;
  readonly records: readonly ChangeRecord[];
}

/** Lists are made when a page first asks for them: one page needs few of them. */
export class Site {
  readonly knowledge: Knowledge;
  readonly records: readonly ChangeRecord[];
  readonly parts: readonly Part[];
  readonly components: readonly Component[];
  readonly bulletins: readonly Bulletin[];
  readonly #busiestFirst = once(() => {
    const count = ({ id }: System): number => this.knowledge.recordsBySystem.get(id)?.length ?? 0;
    return [...this.systems].sort((a, b) => count(b) - count(a));
  });
  readonly #cancelledBy = once(() => {
    const cancels = this.records.flatMap((record) => statementsOf(record.statements, "cancels"));
    return new Map(cancels.map((it) => [it.target, { record: it.record, whole: it.scope === undefined }]));
  });
  readonly #recordsByLine = once(
    () =>
      new Map(
        this.catalog.lines.map((line) => [
          line.id,
          this.records.filter((record) => yearsOnLine(this.catalog, record, line).length > 0),
        ]),
      ),
  );
  readonly #recordsByYear = once(() =>
    Map.groupBy(this.records, (record) => begins(this.catalog, record) ?? Number.NaN),
  );
  readonly #lineYears = once(() =>
    this.catalog.lines.flatMap((line) =>
      yearsOf(this.catalog.space, line.cars).map((year) => this.#lineYear(line, year)),
    ),
  );

  constructor(knowledge: Knowledge) {
    const { catalog } = knowledge;
    this.knowledge = knowledge;
    this.records = [...catalog.records.values()];
    this.parts = [...catalog.parts.values()];
    this.components = [...catalog.components.values()];
    this.bulletins = [...catalog.bulletins.values()];
  }

  get lineYears(): readonly LineYear[] {
    return this.#lineYears();
  }
  /** Records whose instruction another record ended, the whole of it or a part. */
  get cancelledBy(): ReadonlyMap<string, { readonly record: string; readonly whole: boolean }> {
    return this.#cancelledBy();
  }
  get recordsByLine(): ReadonlyMap<string, readonly ChangeRecord[]> {
    return this.#recordsByLine();
  }
  get recordsByYear(): ReadonlyMap<number, readonly ChangeRecord[]> {
    return this.#recordsByYear();
  }
  /** The years with which some record begins. An order of a year in which no car was built any more begins with it as well. */
  get beginnings(): readonly number[] {
    return [...this.recordsByYear.keys()].sort((a, b) => a - b);
  }
  get catalog(): Catalog {
    return this.knowledge.catalog;
  }
  get systems(): readonly System[] {
    return this.catalog.systems;
  }
  /** For the empty field of the question: of the system with most records. */
  get exampleQuestion(): string {
    const [busiest] = this.#busiestFirst();
    return busiest ? `what changed on the ${busiest.name.toLowerCase()}` : "what changed";
  }
  get lines(): readonly Line[] {
    return this.catalog.lines;
  }
  get years(): readonly number[] {
    return this.catalog.years;
  }
  get moved(): readonly Move[] {
    return this.catalog.moved;
  }

  get feeds(): Feed[] {
    const { title } = this.catalog.maker;
    return [
      { title: `${title}: all changes`, address: "/feeds/all.xml", page: "/records/", records: this.records },
      ...this.lines.map((line) => ({
        title: `${title}: ${line.name}`,
        address: `/feeds/line-${line.id}.xml`,
        page: address("line", line.id),
        records: this.recordsByLine.get(line.id) ?? [],
      })),
      ...this.systems.map((system) => ({
        title: `${title}: ${system.name}`,
        address: `/feeds/system-${system.id}.xml`,
        page: address("system", system.id),
        records: this.knowledge.recordsBySystem.get(system.id) ?? [],
      })),
    ];
  }

  /** Every page that a search engine may list, with the day of its last change where that is known. */
  get addresses(): { address: string; changed?: string }[] {
    const lists = [
      "/",
      "/ask/",
      "/car/",
      "/fit/",
      "/retrofits/",
      "/settings/",
      "/apart/",
      "/sums/",
      "/records/",
      "/parts/",
      "/components/",
      "/systems/",
      "/lines/",
      "/years/",
      "/bulletins/",
      "/map/",
      "/feeds/",
      "/data/",
    ];
    return [
      ...lists.map((at) => ({ address: at })),
      ...this.records.map(({ id, facts }) => ({
        address: address("record", id),
        changed: facts.revised ?? facts.issued,
      })),
      ...this.parts.map(({ number }) => ({ address: address("part", number) })),
      ...this.components.map(({ id }) => ({ address: address("component", id) })),
      ...this.systems.map(({ id }) => ({ address: address("system", id) })),
      ...this.lines.map(({ id }) => ({ address: address("line", id) })),
      ...this.lineYears.map(({ line, year }) => ({ address: `/lines/${line.id}/${year}/` })),
      ...this.years.map((year) => ({ address: address("year", String(year)) })),
      ...this.bulletins.map(({ id, facts }) => ({ address: address("bulletin", id), changed: facts.issued })),
    ];
  }

  /** The id at the end of a chain of moves; nothing when it was withdrawn. */
  whereItLeads(move: Move): string | undefined {
    let at = move;
    for (;;) {
      const next = this.moved.find((other) => other.kind === move.kind && other.from === at.to);
      if (!next) return at.to;
      at = next;
    }
  }

  #lineYear(line: Line, year: number): LineYear {
    const fresh: ChangeRecord[] = [];
    const older: ChangeRecord[] = [];
    for (const record of this.recordsByLine.get(line.id) ?? []) {
      const begun = beginsOnLine(this.catalog, record, line);
      if (begun === year) fresh.push(record);
      else if (yearsOnLine(this.catalog, record, line).includes(year)) older.push(record);
    }
    return { line, year, fresh, older };
  }
}
