import { longestOf } from "./notKeptWords.js";
import type { Token } from "./tokens.js";

/**
 * Foods that are no kind of the catalogue, and whose name spelling or a part of it would make into one (found by trying
 * names of foods): they are asked about instead. A name that the catalogue has is taken before this list.
 */
const written =
  "savory|summer savory|winter savory|ajedrea|black sapote|zapote negro|sapote negro|chocolate pudding fruit|horned melon|kiwano|mitsuba|" +
  "olive|black olive|green olive|aceituna|oliva|calamondin|calamansi|kalamansi|salak|snake fruit|" +
  "oca|maca|mibuna|wild garlic|winter cress|lingonberry|lingonberries|dewberry|dewberries|sea kale|sea beet|sugar beet|stem lettuce|" +
  "vietnamese coriander|new zealand spinach|garlic mustard|lemon myrtle|kaffir lime|makrut lime|finger lime|" +
  "black bean|kidney bean|pinto bean|navy bean|frijol negro|frijoles negros|frijol|frijoles|" +
  "cocoa|cola|guacamole|hoja santa|ciruela pasa|ciruelas pasa|uva pasa|uvas pasa|chile ancho|chiles ancho|chile guajillo|chiles guajillo|chile pasilla|chiles pasilla|potato salad|corn flakes|ginger ale|ginger beer|curry paste|curry powder";
const names: ReadonlySet<string> = new Set(written.split("|").flatMap((name) => [name, `${name}s`]));

/** All the names, for tests: none of them may be a name of a kind. */
export const otherFoods: readonly string[] = written.split("|");

/** The longest of these names that begins at a token, and where it ends. */
export const otherFoodAt = (tokens: readonly Token[], at: number): number | undefined =>
  longestOf(tokens, at, (text) => (names.has(text) ? true : undefined))?.next;
