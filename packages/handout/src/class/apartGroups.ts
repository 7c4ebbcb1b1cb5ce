import { commodityOf } from "@keepwright/catalogue";
import { givesMuchEthylene, harmedByEthylene } from "../answer/apart.js";
import type { ClassContext } from "./classContext.js";

/** Whether two kinds had better not lie side by side: by the ripening gas or the smell of either, which no answer may name in full. */
export function notBeside(
  { catalogue }: Pick<ClassContext, "catalogue">,
  one: string,
  other: string,
): boolean {
  if (one === other) return false;
  const [first, second] = [commodityOf(catalogue, one), commodityOf(catalogue, other)];
  const gas =
    (givesMuchEthylene(first) && harmedByEthylene(second)) ||
    (givesMuchEthylene(second) && harmedByEthylene(first));
  const smell = catalogue.odours.some(
    ({ giver, taker }) => (giver === one && taker === other) || (giver === other && taker === one),
  );
  return gas || smell;
}

/** Parts kinds into groups, so that within a group any two may lie side by side; in their order, each in the first group that bears it. */
export function apartGroups(context: Pick<ClassContext, "catalogue">, ids: readonly string[]): string[][] {
  const groups: string[][] = [];
  for (const id of ids) {
    const fitting = groups.find((group) => !group.some((other) => notBeside(context, id, other)));
    if (fitting) fitting.push(id);
    else groups.push([id]);
  }
  return groups;
}
