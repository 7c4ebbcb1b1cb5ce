import { ClassError, type ClassRequest } from "@keepwright/handout";
import { schemaFindings } from "@keepwright/planner";
import type { Door } from "../door/door.js";
import { readJsonFile } from "../door/readText.js";
import { usualPaper } from "../options/paper.js";
import { userError } from "../userError.js";
import { classRequestSchema } from "./classRequestSchema.js";

const remedy = 'Correct it; this one works: {"version": 1, "items": ["apples", "kale"]}.';

/** Exactly one thing says what the class is about. */
function checkAbout({ items, season, household }: ClassRequest): void {
  const given = [items, season].filter((one) => one !== undefined).length;
  if (given > 1) throw userError("class file", "it has both items and season", "Leave one of them out.");
  if (given === 0 && household.haul === undefined)
    throw userError(
      "class file",
      "it does not say what the class is about",
      "Give items, a season, or a household with a haul.",
    );
}

/** A request from data. Throws ClassError with every fault. */
export function classRequestFrom(given: unknown): ClassRequest {
  const parsed = classRequestSchema.safeParse(given);
  if (!parsed.success) throw new ClassError(schemaFindings(given, "class file", parsed.error));
  const { audience, ...rest } = parsed.data;
  const request = { ...rest, audience: { ...audience, paper: audience.paper ?? usualPaper(audience.units) } };
  checkAbout(request);
  return request;
}

/** A request from a file. Throws UserError or ClassError. */
export const readClassRequest = (door: Door, path: string): ClassRequest =>
  classRequestFrom(readJsonFile(door, path, "class file", remedy));
