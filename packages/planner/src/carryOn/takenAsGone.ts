import { told } from "../problem/findingCode.js";
import { type Finding, HappenedError } from "../problem/inputError.js";
import { shownValue } from "../problem/schemaFindings.js";
import type { BoundHappened, BoundHappening } from "./bindHappened.js";
import type { Remaining } from "./remaining.js";

/** What is only told of something that is still there. */
const stillThere = ["ripeness", "seenGood", "cut", "place", "wrap", "hoursOut"] as const;

const tellsAmount = ({ said }: BoundHappening): boolean =>
  [said.eaten, said.left, said.thrownOut, said.givenAway, said.frozen].some((amount) => amount !== undefined);

/**
 * What is told of a lot that the plan takes to be eaten up is not passed over: it may have been kept after all, and its hours out of the refrigerator would be lost. Throws
 * HappenedError, which asks how much is left, unless it is told what became of it.
 */
export function refuseStateOfGone({ happenings }: BoundHappened, remaining: readonly Remaining[]): void {
  const known = new Set(happenings.filter(tellsAmount).flatMap(({ parts }) => parts));
  const findings = happenings.flatMap((one): Finding[] => {
    const said = stillThere.filter((field) => one.said[field] !== undefined);
    const gone = one.parts.every((part) => remaining[part]!.portions === 0 && !known.has(part));
    if (said.length === 0 || !gone) return [];
    const name = one.said.lot;
    return [
      {
        thing: one.thing,
        value: `${said.map(shownValue).join(", ")} is told of it, yet by the plan all of it is eaten by now`,
        remedy: `Say how much is left (“200 g of ${name} left”), or that it is eaten (“ate all the ${name}”).`,
        ...told("eaten by the plan", { lot: shownValue(name), fields: said.map(shownValue), name }),
      },
    ];
  });
  if (findings.length > 0) throw new HappenedError(findings);
}
