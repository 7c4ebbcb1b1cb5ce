import { classTopics } from "@keepwright/handout";
import { type ClassForm, classKinds, classMinutes } from "../state/classForm.js";
import { type At, type Check, choice, flag, list, number, someOf, unusable } from "./check.js";

/** Names of kinds for a class; far more than a class takes. */
const longestKinds = 10_000;

/** Text that may be empty: somebody took all names out. */
const anyText: Check<string> = (value, at) =>
  typeof value === "string" && value.length <= longestKinds
    ? value
    : unusable(value, at, { want: "text", most: longestKinds });

const fields: { readonly [field in keyof ClassForm]: Check<ClassForm[field]> } = {
  about: choice(["list", "season"] as const),
  kinds: anyText,
  month: number(1, 12, { whole: true }),
  region: choice(["northern", "southern"] as const),
  count: number(classKinds.least, classKinds.most, { whole: true }),
  minutes: number(classMinutes.least, classMinutes.most, { whole: true }),
  topics: list(choice(classTopics), 0, classTopics.length),
  large: flag,
};

/** What was said of a class, field by field; nothing where nothing was. */
export const restoreClass = (value: unknown, at: At): Partial<ClassForm> =>
  value === undefined ? {} : someOf<ClassForm>(value, at, fields);
