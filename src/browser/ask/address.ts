/**
 * The question in the address: ?q=…&without=…&as=said:id&system=…&line=…, with the car as "this car" writes it. What is in the address
 * can be sent, and the way back works.
 */
import { type Chosen, FACETS } from "../../engine/ask/find-records.ts";
import type { Picks } from "../../engine/ask/keep-picked.ts";
import { readAddress as readCar, type Step, writeAddress as writeCar } from "../car/state.ts";

export interface Asked {
  readonly question: string;
  readonly picks: Picks;
  readonly chosen: Chosen;
  /** What is known of the car beside what the question says. */
  readonly car: readonly Step[];
}

export function readAddress(search: string): Asked {
  const params = new URLSearchParams(search);
  const meant = params.getAll("as").flatMap((text) => {
    const at = text.lastIndexOf(":");
    return at < 1 ? [] : [[text.slice(0, at), text.slice(at + 1)] as const];
  });
  return {
    question: params.get("q")?.trim() ?? "",
    picks: { without: params.getAll("without"), meant: Object.fromEntries(meant) },
    chosen: Object.fromEntries(
      FACETS.map((facet) => [facet, params.getAll(facet)] as const).filter(([, values]) => values.length > 0),
    ),
    car: readCar(search).steps,
  };
}

/** The part of the address behind the page. */
export function writeAddress({ question, picks, chosen, car }: Asked): string {
  const params = new URLSearchParams();
  params.set("q", question);
  for (const said of picks.without) params.append("without", said);
  for (const [said, id] of Object.entries(picks.meant)) params.append("as", `${said}:${id}`);
  for (const facet of FACETS) for (const value of chosen[facet] ?? []) params.append(facet, value);
  const known = writeCar({ steps: car, known: undefined });
  return `?${params}${known === "" ? "" : `&${known.slice(1)}`}`;
}

/** Another question about the same car: what was picked for the old one goes. */
export function anew(asked: Asked, question: string): Asked {
  return { question, picks: { without: [], meant: {} }, chosen: {}, car: asked.car };
}
