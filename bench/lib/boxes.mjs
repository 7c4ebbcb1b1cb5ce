// Invented boxes of produce, one JSON object each, from one seed: the same on every machine.
import { catalogue } from "@keepwright/catalogue";
import { seededRandom } from "@keepwright/quantities";

/** So many rows of so many kinds each. Amounts are invented; names are the catalogue's. */
export function boxes(count, kindsEach, seed = 1) {
  const random = seededRandom(seed);
  const kinds = [...catalogue().commodities.values()];
  return Array.from({ length: count }, (_, index) => {
    const haul = Array.from({ length: kindsEach }, () => {
      const kind = kinds[Math.floor(random() * kinds.length)];
      return `${100 * (2 + Math.floor(random() * 8))} g ${kind.names.en.many}`;
    });
    return { id: `box-${index + 1}`, haul: haul.join("\n"), people: 1 + Math.floor(random() * 4) };
  });
}
