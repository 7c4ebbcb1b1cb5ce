import { nextToNothing } from "@keepwright/planner";
import type { TwoWaysCell, TwoWaysView } from "../../view/twoWaysView.js";
import { massWords } from "../../words/amounts.js";
import type { ClassContext } from "../classContext.js";

/** Most things that are told one by one: those whose loss differs most. A declared preference, no source. */
const mostThings = 8;

/** One thing in a row: its name, and what came of it on each side. */
export type ComparedThing = readonly [name: string, unsorted: string, planned: string];

function becameOf(context: ClassContext, cells: readonly TwoWaysCell[]): string {
  const { say, handout } = context;
  const last = cells.at(-1)!;
  const gone = cells.findIndex(({ state }) => state === "past its best");
  const words =
    gone < 0 ? last.words : say("slides.things.gone", { number: gone + 1, ending: cells[gone]!.ending });
  const lost = massWords(handout.speaker, handout.units, last.lost);
  return last.lost < nextToNothing ? words : say("slides.things.lost", { words, lost });
}

/** The things whose loss differs between the sides, most first, with when and why they were gone. */
export function comparedThings(context: ClassContext, { evenings }: TwoWaysView): ComparedThing[] {
  const { rows } = evenings.at(-1)!;
  return rows.flatMap((row, at): ComparedThing[] => {
    if (at >= mostThings || Math.abs(row.unsorted.lost - row.planned.lost) < nextToNothing) return [];
    const cells = (side: "unsorted" | "planned") => evenings.map((evening) => evening.rows[at]![side]);
    return [[row.name, becameOf(context, cells("unsorted")), becameOf(context, cells("planned"))]];
  });
}
