import { told } from "../problem/findingCode.js";
import { type Finding, HappenedError } from "../problem/inputError.js";
import { schemaFindings, shownValue } from "../problem/schemaFindings.js";
import { type Happened, type HappenedLot, happenedSchema } from "./happened.js";

const removals = ["eaten", "thrownOut", "givenAway", "frozen"] as const;

function sayNothing(lot: HappenedLot, index: number): Finding[] {
  const { lot: name, done, ...said } = lot;
  if (done.length > 0 || Object.values(said).some((value) => value !== undefined)) return [];
  return [
    {
      thing: `happened lots [${index + 1}], ${shownValue(name)}`,
      value: "nothing is said of it",
      remedy: `Say what happened to it, for example "eaten": "all", or take it out.`,
      ...told("nothing said of lot", { lot: shownValue(name) }),
    },
  ];
}

function saysTwice(lot: HappenedLot, index: number): Finding[] {
  const thing = `happened lots [${index + 1}], ${shownValue(lot.lot)}`;
  const taken = removals.filter((name) => lot[name] !== undefined && lot[name] !== "none");
  const findings: Finding[] = [];
  if (lot.left !== undefined && taken.length > 0) {
    findings.push({
      thing,
      value: `"left" stands beside ${taken.map((name) => `"${name}"`).join(", ")}`,
      remedy: `Say either what is left or what is gone.`,
      ...told("left beside gone", { lot: shownValue(lot.lot), fields: taken.map(shownValue) }),
    });
  }
  if (lot.since !== undefined && lot.place === undefined && lot.wrap === undefined) {
    findings.push({
      thing,
      value: `"since" stands alone`,
      remedy: `Say where it lies ("place") or what is around it ("wrap"), or take "since" out.`,
      ...told("since alone", { lot: shownValue(lot.lot) }),
    });
  }
  return findings;
}

/** What happened with what was left out filled in. Throws HappenedError with all findings: its shape, or what contradicts itself. */
export function happenedFrom(given: unknown): Happened {
  const parsed = happenedSchema.safeParse(given);
  if (!parsed.success) throw new HappenedError(schemaFindings(given, "happened", parsed.error));
  const findings = parsed.data.lots.flatMap((lot, index) => [
    ...sayNothing(lot, index),
    ...saysTwice(lot, index),
  ]);
  if (findings.length > 0) throw new HappenedError(findings);
  return parsed.data;
}
