import { isEach } from "./amounts.js";
import type { Clause } from "./clauses.js";
import type { Element } from "./elements.js";

const isAmount = (element: Element) =>
  element.type === "number" || element.type === "unit" || element.type === "size";
const hasAmount = (elements: readonly Element[]) =>
  elements.some(({ type }) => type === "number" || type === "unit");

/** The elements of an amount told "each" ("2 each", "1 kg of each"); none where there is no such amount. */
function amountOfEach(elements: readonly Element[]): readonly Element[] {
  const told =
    elements.some((element) => element.type === "unit" && isEach(element.unit)) &&
    elements.some(({ type }) => type === "number");
  return told ? elements.filter(isAmount) : [];
}

const isFree = (clause: Clause) => !clause.lent && !hasAmount(clause.before) && !hasAmount(clause.after);
const isDenied = (clause: Clause) => clause.before.some(({ type }) => type === "negation");

/**
 * Gives an amount told "each" to every name of the list it stands with: before the list ("2 each apples, pears") or behind
 * it ("apples and pears, 1 kg each"). The list ends at a name with an amount of its own, and at a full stop. Words not
 * understood within it do not end it. Behind a name with an amount, "each" means each of those pieces instead.
 */
export function sharedOut(clauses: readonly Clause[]): Clause[] {
  const result = [...clauses];
  const lend = (from: number, step: 1 | -1, lent: readonly Element[]) => {
    for (let at = from; result[at + step]; at += step) {
      if (result[step > 0 ? at + 1 : at]!.afterHard) return;
      const clause = result[at + step]!;
      if (!clause.name || isDenied(clause)) continue;
      if (!isFree(clause)) return;
      result[at + step] = { ...clause, lent };
    }
  };
  for (const [at, clause] of clauses.entries()) {
    if (!clause.name) continue;
    const ahead = amountOfEach(clause.before);
    if (ahead.length > 0) lend(at, 1, ahead);
    const behind = hasAmount(clause.before) || clause.lent ? [] : amountOfEach(clause.after);
    if (behind.length > 0) lend(at, -1, behind);
  }
  return result;
}
