/**
 * Seeds at which the planner does not find the best of all choices. A seed that is found fails its test until it is taken
 * out; how far off the plans are is printed with the tests.
 */
export const knownMisses: Readonly<Record<"whole" | "divided", ReadonlySet<number>>> = {
  whole: new Set([8, 17, 40, 42, 48]),
  divided: new Set([64]),
};
