import { longestOf } from "./notKeptWords.js";
import type { Token } from "./tokens.js";

/**
 * What often stands on the same list and is no fruit or vegetable; from memory. Many of these names are near to that of some kind ("cerveza", "cereza"),
 * or a part of one ("milk", "saffron milk cap"). A name that the catalogue has, and a longer one that begins so, is taken before this list.
 */
const english =
  "egg|milk|whole milk|skim milk|oat milk|almond milk|soy milk|coconut milk|buttermilk|butter|peanut butter|almond butter|margarine|cheese|cream cheese|cottage cheese|goat cheese|" +
  "cheddar|mozzarella|parmesan|feta|cream|sour cream|ice cream|whipped cream|yogurt|yoghurt|kefir|loaf of bread|sliced bread|loaf|loaves|toast|bagel|baguette|" +
  "bread roll|croissant|muffin|tortilla|corn tortilla|flour tortilla|tortilla chips|pita|naan|cracker|cookie|biscuit|candy|candies|chocolate|popcorn|cereal|granola|" +
  "oat|oatmeal|rolled oats|rice|brown rice|white rice|pasta|noodle|spaghetti|macaroni|couscous|flour|sugar|brown sugar|salt|honey|maple syrup|" +
  "chicken|whole chicken|chicken breast|chicken thigh|chicken wing|chicken leg|chicken broth|chicken stock|broth|stock cube|turkey|ground turkey|beef|ground beef|minced beef|mince|" +
  "steak|pork|pork chop|lamb|meat|ground meat|ham|bacon|sausage|salami|hot dog|fish|salmon|cod|shrimp|prawn|tuna fish|can of tuna|tofu|tempeh|hummus|" +
  "mayonnaise|mayo|coffee|tea|tea bag|water|bottled water|sparkling water|soda|beer|wine|red wine|white wine|almond|walnut|peanut|cashew|pecan|nuts|mixed nuts|raisin|" +
  "toilet paper|paper towel|kitchen roll|napkin|tissue|soap|dish soap|washing up liquid|shampoo|toothpaste|toothbrush|detergent|laundry detergent|bleach|sponge|diaper|nappy|nappies|" +
  "trash bag|bin bag|aluminum foil|aluminium foil|cling film|dog food|cat food|cat litter|battery|batteries|light bulb";
const spanish =
  "huevo|docena de huevos|leche|leche entera|leche deslactosada|leche de coco|leche de almendra|leche de soya|mantequilla|margarina|queso|queso fresco|queso crema|quesillo|" +
  "crema|crema de leche|nata|helado|yogur|yogurt|pan|pan de caja|pan de molde|pan dulce|bolillo|barra de pan|bizcocho|tortilla|tortilla de maiz|tortillas de maiz|tortilla de harina|tortillas de harina|" +
  "tostada|totopo|arepa|galleta|dulce de leche|chocolate|cereal|avena|arroz|pasta|fideo|espagueti|espaguetis|harina|harina de maiz|masa|azucar|sal|miel|miel de abeja|" +
  "lenteja seca|pollo|pechuga de pollo|pechuga|muslo de pollo|muslos de pollo|pierna de pollo|piernas de pollo|caldo de pollo|pavo|res|carne|carne molida|carne de res|carne de cerdo|" +
  "bistec|bisteces|cerdo|puerco|cordero|jamon|tocino|tocineta|salchicha|chorizo|pescado|salmon|bacalao|camaron|camarones|atun|lata de atun|latas de atun|mayonesa|cafe|agua|agua mineral|agua con gas|" +
  "refresco|gaseosa|cerveza|vino|vino tinto|vino blanco|almendra|nuez|nueces|cacahuate|mani|pasa|" +
  "papel higienico|papel de cocina|servilleta|panuelo|jabon|jabon de manos|champu|pasta de dientes|cepillo de dientes|detergente|cloro|esponja|panal|panales|bolsa de basura|bolsas de basura|" +
  "papel aluminio|comida para perro|comida para gato|croqueta";

/** All the names, in small letters without accents; of each what it may be in the plural too. */
export const noProduceNames: readonly string[] = [...new Set(`${english}|${spanish}`.split("|"))];

const plurals = (name: string): readonly string[] => [name, `${name}s`, `${name}es`];
const names: ReadonlySet<string> = new Set(noProduceNames.flatMap(plurals));

/** Where the longest of these names that begins at a token ends. */
export const noProduceAt = (tokens: readonly Token[], at: number): number | undefined =>
  longestOf(tokens, at, (text) => (names.has(text) ? true : undefined))?.next;
