import type { LotChange } from "@keepwright/planner";
import { massWords } from "../words/amounts.js";
import type { HandoutContext } from "./context.js";

type Taken = NonNullable<LotChange["taken"]>;

/** Amounts of one name by the way they went, each way once: the parts of a lot are told of together. */
function together(taken: Taken): Taken {
  const ways = [...new Set(taken.map(({ way }) => way))];
  return ways.map((way) => {
    const grams = taken.filter((one) => one.way === way).reduce((sum, one) => sum + one.grams.value, 0);
    return { way, grams: { value: grams, unit: "g" } };
  });
}

/** What was frozen, given away or thrown out of the lots called by each name, with how much of it, a line a name. */
export function takenWords(
  { speaker, units }: HandoutContext,
  changes: readonly LotChange[],
  nameOf: (change: LotChange) => string,
): string[] {
  const some = changes.filter(({ taken }) => taken !== undefined);
  return [...new Set(some.map(nameOf))].map((name) => {
    const of = some.filter((change) => nameOf(change) === name);
    const amounts = together(of.flatMap(({ taken }) => taken!)).map(({ way, grams }) =>
      speaker.say(`carryOn.taken.${way}`, { grams: massWords(speaker, units, grams.value) }),
    );
    return speaker.say("carryOn.taken", { name: speaker.capital(name), amounts: speaker.list(amounts) });
  });
}
