import {
  type Finding,
  type FindingCode,
  type FindingValues,
  InputError,
  type NamedId,
} from "@keepwright/planner";
import { plainText } from "../words/plainText.js";
import type { HandoutContext } from "./context.js";
import { kindName } from "./kindNames.js";
import { kitchenWords } from "./ordinaryNames.js";

const withId = (context: HandoutContext, { id, name }: NamedId): string =>
  `${plainText(id)} (${kitchenWords(context, name)})`;

/** A name as it was written or, where it is the id of a kind, the kind's name. */
function named(context: HandoutContext, name: string | number): string | number {
  const id = String(name).replace(/^"(.*)"$/, "$1");
  if (!context.catalogue.commodities.has(id)) return name;
  const kind = kindName(context, id);
  return id === name ? kind : `“${kind}”`;
}

type Say = (key: string, values?: Record<string, string | number>) => string;

const wholes: ReadonlySet<string> = new Set([
  "kitchen",
  "haul",
  "arrangement",
  "happened",
  "household",
  "plan",
  "row",
]);

/** What a file says at a place of it: where, what stands there, and what should. Names of fields stay as files have them. */
function ofFile(say: Say, { whole, at, stands, valueKind, expected }: FindingValues): Record<string, string> {
  if (typeof whole !== "string") return {};
  const name = wholes.has(whole) ? say(`file.whole.${whole}`) : whole;
  return {
    where: say("file.at", { whole: name, at: String(at ?? "") }).trim(),
    stands: stands === undefined ? say("file.nothing") : String(stands),
    valueKind: typeof valueKind === "string" ? say(`file.kind.${valueKind}`) : String(expected ?? ""),
  };
}

/** How a vent is set, in words. */
const ventWords = (say: Say, { fixed, setting }: FindingValues): Record<string, string> => ({
  ...(fixed !== undefined && { fixed: say(`carryOn.setting.${String(fixed)}`) }),
  ...(setting !== undefined && { setting: say(`carryOn.setting.${String(setting)}`) }),
});

/** What a finding speaks of, lists joined, kinds and places of ordinary kitchens by their names in the language. */
function spoken(context: HandoutContext, say: Say, values: FindingValues): Record<string, string | number> {
  const { kinds, places, choices, ...rest } = values;
  const joined = Object.entries(rest).flatMap(([name, value]): [string, string | number][] => {
    if (value === undefined) return [];
    if (typeof value === "object") return [[name, value.map(String).join(", ")]];
    return [[name, name === "lot" || name === "name" ? named(context, value) : value]];
  });
  return {
    ...Object.fromEntries(joined),
    ...ofFile(say, values),
    ...ventWords(say, values),
    ...(Array.isArray(choices) && { choices: context.speaker.choices(choices.map(String)) }),
    ...(kinds && { kinds: kinds.map((id) => kindName(context, id)).join(", ") }),
    ...(places && { places: places.map((place) => withId(context, place)).join(", ") }),
  };
}

/** What is wrong with what was given, and what would work, in a sentence or two: in the language where it has a code, else as the planner says it. */
export function findingLine(context: HandoutContext, { thing, value, remedy, told }: Finding): string {
  if (!told) return plainText(`${thing}: ${value}. ${remedy}`);
  const key: `finding.${FindingCode}` = `finding.${told.code}`;
  // Which names belong to which code is seen by a test that says every one.
  const say = context.speaker.say as Say;
  return plainText(say(key, spoken(context, say, told.values)));
}

/** The same of several, each in a line. */
export const findingLines = (context: HandoutContext, findings: readonly Finding[]): string =>
  findings.map((finding) => findingLine(context, finding)).join("\n");

/** The same of an error: each finding in a line; undefined of an error that is nobody's input. */
export const problemLines = (context: HandoutContext, error: unknown): string | undefined =>
  error instanceof InputError ? findingLines(context, error.findings) : undefined;
