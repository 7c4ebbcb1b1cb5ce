/** What the binding's empty file system is made of, by its text. All files are given beforehand, so that none of these is ever asked for one. */
const parts: Readonly<Record<string, () => unknown>> = { "return 0": () => 0, "return true": () => true };
const nothing = () => {
  throw new Error("The typesetter asked for a file that it was not given.");
};

/**
 * Does something while code made from text stands replaced. The binding makes five small functions from text when it begins, which the page's
 * policy forbids, and rightly; they are put in ready made, and no other text becomes code.
 */
export function withoutMakingCode<Result>(work: () => Result): Result {
  const { Function: made } = globalThis;
  const readyMade = (words: readonly unknown[]) => parts[String(words.at(-1))] ?? nothing;
  // With “new” or without: what makes scripts smaller leaves it out.
  const standIn = new Proxy(made, {
    construct: (_, words) => readyMade(words),
    apply: (_, __, words) => readyMade(words),
  });
  Object.assign(globalThis, { Function: standIn });
  try {
    return work();
  } finally {
    Object.assign(globalThis, { Function: made });
  }
}
