import type { Catalogue } from "@keepwright/catalogue";
import {
  type ClassKit,
  handoutContext,
  jsonText,
  kitTwoWaysView,
  languageFor,
  twoWaysText,
} from "@keepwright/handout";

/** The files of the comparison in a kit: as data and as words. */
export const twoWaysFiles = ["two-ways.json", "two-ways.txt"] as const;

/** The worked household's food laid two ways, evening by evening, as data (schemas/two-ways.schema.json) and as text: bytes by file. */
export function twoWaysOf(kit: ClassKit, catalogue: Catalogue): ReadonlyMap<string, Uint8Array> {
  const { language, units, region } = kit.request.audience;
  const { twoWays } = kit.household;
  const context = handoutContext(catalogue, { units, language: languageFor(language, units, region) });
  const contents = [jsonText(twoWays), twoWaysText(kitTwoWaysView(context, twoWays))];
  return new Map(twoWaysFiles.map((name, index) => [name, new TextEncoder().encode(contents[index]!)]));
}
