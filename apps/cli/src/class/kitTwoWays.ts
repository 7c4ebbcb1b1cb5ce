import { join } from "node:path";
import type { Catalogue } from "@keepwright/catalogue";
import {
  type ClassKit,
  handoutContext,
  jsonText,
  kitTwoWaysView,
  languageFor,
  twoWaysText,
} from "@keepwright/handout";
import type { Door } from "../door/door.js";

/** The files of the comparison in a kit: as data and as words. */
export const twoWaysFiles = ["two-ways.json", "two-ways.txt"] as const;

/** Writes the worked household's food laid two ways, evening by evening, as data (schemas/two-ways.schema.json) and as text. */
export function writeTwoWays(door: Door, folder: string, kit: ClassKit, catalogue: Catalogue): void {
  const { language, units } = kit.request.audience;
  const { twoWays } = kit.household;
  const context = handoutContext(catalogue, { units, language: languageFor(language, units) });
  const contents = [jsonText(twoWays), twoWaysText(kitTwoWaysView(context, twoWays))];
  for (const [index, name] of twoWaysFiles.entries())
    door.writeFile(join(folder, name), new TextEncoder().encode(contents[index]!));
}
