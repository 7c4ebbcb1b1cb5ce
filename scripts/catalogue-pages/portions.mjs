/** Portions that one unit of a kind makes: its grams divided by the grams of a portion; the range takes both ranges at their far ends. */
export function portionsOf({ units, portion }) {
  const [least, most] = [portion.low ?? portion.value, portion.high ?? portion.value];
  return units.map(({ name, grams, low = grams, high = grams }) => ({
    name,
    grams: { value: grams, low, high },
    portions: { value: grams / portion.value, low: low / most, high: high / least },
  }));
}
