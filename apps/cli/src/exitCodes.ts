/** What the command line tells the shell when it ends. Listed in --help and in docs/guide/command-line.md. */
export const exitCodes = {
  /** Done, and everything was understood. */
  done: 0,
  /** A fault of the program itself. */
  fault: 1,
  /** Wrong use, or input nothing can be made of. */
  badInput: 2,
  /** Done, but some of the words, or some rows of many, were not understood and are left out. */
  partlyUnderstood: 3,
} as const;
export type ExitCode = (typeof exitCodes)[keyof typeof exitCodes];

export const exitCodesHelp = `
Exit codes:
  0  done, and everything was understood
  1  a fault of the program itself
  2  wrong use, or input nothing can be made of
  3  planned or judged, but some words were not understood and are not in the plan; or some rows of a batch failed
`;
