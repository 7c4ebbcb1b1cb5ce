import type { Plan } from "@keepwright/planner";
import { type LotLines, lineOfLot } from "./lotLines.js";
import type { ReadLine } from "./readLots.js";

/** The key of the person's line for a lot. A lot of which the line is there no more (the plan is a moment older than the text) keeps its id. */
export function lotKeys(lines: readonly ReadLine[], lotLines?: LotLines): (lot: string) => string {
  const byId = new Map(lines.flatMap(({ lot, key }) => (lot ? [[lot.id, key] as const] : [])));
  return (lot) => {
    const { line, more } = lineOfLot(lotLines, lot);
    const key = byId.get(line);
    return key === undefined ? lot : key + more;
  };
}

/** The same for each part of a plan: for one part of several, with the number of the part. */
export function lineKeys(
  plan: Pick<Plan, "lots">,
  lines: readonly ReadLine[],
  lotLines?: LotLines,
): (part: string) => string {
  const keyOf = lotKeys(lines, lotLines);
  const byPart = new Map(plan.lots.map(({ id, lot }) => [id, keyOf(lot) + id.slice(lot.length)] as const));
  return (part) => byPart.get(part) ?? part;
}
