import { describe, expect, it } from "vitest";
import { catalogue, findKind, findKinds } from "../src/index.js";

/** Kind, then the names that must surely find it: as typed, without accents, and in capitals. */
const namesByKind: readonly [string, string][] = [
  ["apricot", "damasco, chabacano, albaricoque"],
  ["avocado", "palta, aguacate"],
  ["basil", "albahaca"],
  ["beet", "beet, beets tops on, beets with tops, betabel, remolacha, beterraga"],
  ["beet-greens", "beet tops, beet greens"],
  ["breadfruit", "breadfruit, ulu, fruta de pan, panapén"],
  ["broccoli", "purple sprouting broccoli, brócoli"],
  ["broccoli-rabe", "rapini, broccoli rabe"],
  ["celery", "apio"],
  ["chard", "acelga"],
  ["chayote", "chayote"],
  ["cherimoya", "chirimoya, atemoya"],
  ["cherry", "cereza"],
  ["chilli", "poblano, jalapeño, serrano, habanero, ají"],
  ["cilantro", "cilantro"],
  ["coconut", "coconut, coconuts, coco"],
  ["cucumber", "pepino"],
  ["durian", "durian, durián"],
  ["elderberry", "elderberries, saúco"],
  ["endive", "escarole, frisée"],
  ["epazote", "epazote"],
  ["garlic", "ajo"],
  ["ginger", "jengibre"],
  ["grape", "concord grape"],
  ["grapefruit", "toronja"],
  ["green-bean", "ejotes"],
  ["green-onion", "cebolla de verdeo"],
  ["kale", "cavolo nero, lacinato"],
  ["leek", "puerro, poro"],
  ["lemon", "meyer lemon"],
  ["lime", "key lime, lima"],
  ["malanga", "malanga, yautía"],
  ["mandarin", "clementine, tangerine, satsuma"],
  ["mango", "ataulfo mango, ataulfo, honey mango"],
  ["mint", "hierbabuena"],
  ["nectarine", "nectarine"],
  ["new-potato", "fingerling potatoes, baby potatoes"],
  ["nopal", "nopales"],
  ["okra", "quimbombó"],
  ["onion", "sweet onion"],
  ["orange", "blood orange"],
  ["oregano", "orégano"],
  ["parsley", "perejil"],
  ["pea-in-pod", "guisantes, chícharos"],
  ["peach", "durazno, melocotón"],
  ["pepino", "pepino melon, pepino dulce"],
  ["pineapple", "ananá, piña"],
  ["plantain", "plantain"],
  ["plum", "plumcot, plumcots, ciruela"],
  ["pumpkin", "auyama, ayote"],
  ["purslane", "verdolagas"],
  ["ramps", "ramps"],
  ["raspberry", "frambuesa"],
  ["romanesco", "romanesco"],
  ["rosemary", "romero"],
  ["southern-pea", "southern peas, black-eyed peas, cowpeas, caupí"],
  ["spinach", "espinaca"],
  ["strawberry", "frutilla, fresa"],
  ["sugar-snap-pea", "snap peas, sugar peas"],
  ["sweet-corn", "elote, choclo"],
  ["sweet-potato", "camote, batata, boniato"],
  ["sweetsop", "sugar apple, sweetsop, sitaphal, anón"],
  ["tamarind", "tamarind, tamarindo, imli"],
  ["thyme", "tomillo"],
  ["tomato", "roma tomato, heirloom tomato, jitomate"],
  ["turnip", "turnips with tops"],
  ["watercress", "berro"],
  ["watermelon", "sandía, patilla"],
  ["wax-apple", "wax apple, rose apples, manzana de agua"],
  ["white-sapote", "white sapote, zapote blanco"],
  ["winter-squash", "butternut, acorn squash, kabocha, zapallo"],
  ["yam", "ñame"],
  ["yuca", "yuca, cassava, manioc, mandioca"],
  ["zucchini", "calabacín"],
];

/** Words for several kinds, none of which is taken for granted. */
const sharedNames: readonly [string, string[]][] = [
  ["endive", ["endive", "belgian-endive"]],
  ["arándano", ["blueberry", "cranberry"]],
  ["mora", ["blackberry", "mulberry"]],
  ["pomelo", ["pomelo", "grapefruit"]],
  ["limón", ["lemon", "lime"]],
  ["culantro", ["culantro", "cilantro"]],
  ["quelites", ["amaranth-leaf", "purslane"]],
  ["cebollín", ["chives", "green-onion"]],
  ["custard apple", ["cherimoya", "sweetsop"]],
  ["anona", ["cherimoya", "sweetsop", "soursop"]],
  ["zapote", ["mamey-sapote", "sapodilla", "white-sapote"]],
];

const withoutAccents = (text: string) => text.normalize("NFD").replace(/\p{M}/gu, "");
const pairs = namesByKind.flatMap(([id, names]) => names.split(", ").map((name) => [name, id] as const));

describe("a name in English or Spanish finds its kind", () => {
  it.each(pairs)("%s → %s", (name, id) => {
    for (const typed of [name, withoutAccents(name), name.toUpperCase()]) {
      expect(findKind(catalogue(), typed)?.id, typed).toBe(id);
    }
  });
});

describe("a name of several kinds finds them all, before any other kind, and none for certain", () => {
  it.each(sharedNames)("%s → %j", (name, ids) => {
    const found = findKinds(catalogue(), name).map(({ id }) => id);
    expect(found.slice(0, ids.length).sort()).toEqual([...ids].sort());
    expect(findKind(catalogue(), name)).toBeUndefined();
  });
});
