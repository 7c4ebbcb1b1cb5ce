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

/** What a finding speaks of, lists joined, kinds and places of ordinary kitchens by their names in the language. */
function spoken(context: HandoutContext, values: FindingValues): Record<string, string | number> {
  const { kinds, places, ...rest } = values;
  const joined = Object.entries(rest).map(([name, value]) => [
    name,
    Array.isArray(value)
      ? value.map(String).join(", ")
      : name === "lot" || name === "name"
        ? named(context, value as string | number)
        : value,
  ]);
  return {
    ...Object.fromEntries(joined),
    ...(kinds && { kinds: kinds.map((id) => kindName(context, id)).join(", ") }),
    ...(places && { places: places.map((place) => withId(context, place)).join(", ") }),
  };
}

/** What is wrong with what was given, and what would work, in a sentence or two: in the language where it is a household's matter, else as the planner says it, which only somebody who writes files reads. */
export function findingLine(context: HandoutContext, { thing, value, remedy, told }: Finding): string {
  if (!told) return plainText(`${thing}: ${value}. ${remedy}`);
  const key: `finding.${FindingCode}` = `finding.${told.code}`;
  // Which names belong to which code is seen by a test that says every one.
  const say = context.speaker.say as (key: string, values: Record<string, string | number>) => string;
  return plainText(say(key, spoken(context, told.values)));
}

/** The same of an error: each finding in a line; undefined of an error that is nobody's input. */
export const problemLines = (context: HandoutContext, error: unknown): string | undefined =>
  error instanceof InputError
    ? error.findings.map((finding) => findingLine(context, finding)).join("\n")
    : undefined;
