/**
 * A number that carries its unit in its type, so that grams cannot be passed where kilograms are meant.
 *
 * Brands guard the doors of a room (what a caller hands in). Inside a relation plain numbers are used,
 * named with their unit, because arithmetic drops the brand. See docs/decisions/0002-branded-units-at-the-doors.md.
 */
export type Branded<Unit extends string> = number & { readonly __unit?: Unit };

export type Celsius = Branded<"°C">;
export type Fahrenheit = Branded<"°F">;
export type Grams = Branded<"g">;
export type Kilograms = Branded<"kg">;
export type Litres = Branded<"L">;
export type Days = Branded<"d">;
export type Percent = Branded<"%">;
export type Fraction = Branded<"1">;
export type Pascal = Branded<"Pa">;
/** Volume of ethylene per volume of air, µL/L (equal to parts per million by volume). */
export type MicrolitresPerLitre = Branded<"µL/L">;
