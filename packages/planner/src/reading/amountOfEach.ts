import { isEach } from "./amounts.js";
import type { Clause } from "./clauses.js";
import type { Element } from "./elements.js";

const isAmount = (element: Element) =>
  element.type === "number" || element.type === "unit" || element.type === "size";
const hasAmount = (elements: readonly Element[]) =>
  elements.some((element) => element.type === "number" || (element.type === "unit" && !isEach(element.unit)));
/** Is "each" among them, with an amount or without? */
export const saysEach = (elements: readonly Element[]) =>
  elements.some((element) => element.type === "unit" && isEach(element.unit));

/** The elements of an amount told "each" ("2 each", "1 kg of each"); none where there is no such amount. */
function amountOfEach(elements: readonly Element[]): readonly Element[] {
  const told = saysEach(elements) && elements.some(({ type }) => type === "number");
  return told ? elements.filter(isAmount) : [];
}

const isFree = (clause: Clause) => !clause.lent && !hasAmount(clause.before) && !hasAmount(clause.after);
const isDenied = (clause: Clause) => clause.before.some(({ type }) => type === "negation");

/** The clause with an amount before its name that a list ending here began with. */
function firstOfList(clauses: readonly Clause[], end: number): number | undefined {
  for (let at = end; at > 0 && !clauses[at]!.afterHard; at--) {
    const before = clauses[at - 1]!;
    if (before.name && !isDenied(before) && !isFree(before))
      return hasAmount(before.before) ? at - 1 : undefined;
  }
  return undefined;
}

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
    if (behind.length > 0) {
      lend(at, -1, behind);
    } else if (isFree(clause) && saysEach(clause.after)) {
      // "1 kg of apples and pears each": the amount stands before the first of them.
      const start = firstOfList(result, at);
      if (start !== undefined) lend(start, 1, result[start]!.before.filter(isAmount));
    }
  }
  return result;
}
