/** The same scopes as rules of a general rule engine from the package registry, for one car of which everything is known. */
import { Engine, type NestedCondition, type TopLevelCondition } from "json-rules-engine";
import type { Car } from "../../src/engine/scope/pick.ts";
import type { Clause, Scope } from "../../src/engine/scope/scope.ts";
import type { Space } from "../../src/engine/scope/space.ts";

export class RulePackage {
  readonly #space: Space;
  readonly #size: number;
  readonly #engine = new Engine();

  constructor(space: Space, scopes: readonly Scope[]) {
    this.#space = space;
    this.#size = scopes.length;
    scopes.forEach((scope, number) => {
      const conditions: TopLevelCondition = {
        any: scope.alternatives.map((alternative) => ({ all: alternative.map((clause) => this.#condition(clause)) })),
      };
      this.#engine.addRule({ conditions, event: { type: "holds", params: { number } } });
    });
  }

  #condition(clause: Clause): NestedCondition {
    const fact = (trait: number): string => this.#space.trait(trait).id;
    if (clause.type === "flags") {
      const wanted = clause.side === "any" ? 1 : 0;
      const each = clause.traits.map((trait) => ({ fact: fact(trait), operator: "equal", value: wanted }));
      return clause.side === "any" ? { any: each } : { all: each };
    }
    if (clause.type === "point") {
      const [plant, year, at] = (["plant", "year", clause.by] as const).map((role) =>
        fact(this.#space.role(role) as number),
      ) as [string, string, string];
      const [beyond, reached] =
        clause.side === "from" ? ["greaterThan", "greaterThanInclusive"] : ["lessThan", "lessThan"];
      const sameYear = { fact: year, operator: "equal", value: clause.year };
      return {
        all: [
          { fact: plant, operator: "equal", value: clause.plant },
          {
            any: [
              { fact: year, operator: beyond as string, value: clause.year },
              { all: [sameYear, { fact: at, operator: reached as string, value: clause.at }] },
            ],
          },
        ],
      };
    }
    const [first, last] = this.#space.span(clause.trait);
    const name = fact(clause.trait);
    if (last - first < 32) {
      const value = clause.values.flatMap(([from, to]) => Array.from({ length: to - from + 1 }, (_, i) => from + i));
      return { fact: name, operator: "in", value };
    }
    return {
      any: clause.values.map(([from, to]) => ({
        all: [
          { fact: name, operator: "greaterThanInclusive", value: from },
          { fact: name, operator: "lessThanInclusive", value: to },
        ],
      })),
    };
  }

  /** 1 for each scope that holds, 0 for the others. */
  async verdicts(car: Car): Promise<Uint8Array> {
    const facts = Object.fromEntries([...car].map(([trait, value]) => [this.#space.trait(trait).id, value]));
    const { events } = await this.#engine.run(facts);
    const result = new Uint8Array(this.#size);
    for (const event of events) result[event.params?.number] = 1;
    return result;
  }
}
