import type { Catalogue, Commodity } from "@keepwright/catalogue";
import { dairy } from "@keepwright/catalogue";

export const apartReasons = ["gas from", "gas to", "smell from", "smell to"] as const;

/** Kinds that one kind had better not lie beside, for one reason; seen from the kind asked about. */
export interface Apart {
  readonly because: (typeof apartReasons)[number];
  readonly kinds: readonly string[];
}

/** Ethylene given off [µL/(kg h)] called much: Handbook 66's class "high" begins at 10 at 20 °C (from memory). */
const muchEthylene = 10;

/** Whether a kind gives off much ethylene at the temperatures of a room. */
export const givesMuchEthylene = ({ ethylene }: Commodity): boolean =>
  Math.max(...ethylene.production.filter((one) => one.temperature <= 25).map((one) => one.high)) >=
  muchEthylene;

const harmed = ["moderate", "high", "very high"];

/** Whether ethylene does a kind a harm worth speaking of. */
export const harmedByEthylene = ({ ethylene }: Commodity): boolean =>
  harmed.includes(ethylene.sensitivity.class);

/**
 * Kinds that are named first where more are meant than can be named: what most households have. A declared preference, no source; it
 * has no say in anything that is computed.
 */
const namedFirst =
  "apple banana tomato pear avocado peach mango cantaloupe leaf-lettuce broccoli cucumber carrot spinach cabbage potato onion celery cilantro".split(
    " ",
  );
/** So many are named for one reason. */
const mostNamed = 4;

const place = (id: string): number => {
  const at = namedFirst.indexOf(id);
  return at < 0 ? namedFirst.length : at;
};
const named = (ids: readonly string[]): string[] =>
  [...new Set(ids)].sort((one, other) => place(one) - place(other)).slice(0, mostNamed);

/** What a kind had better not lie beside, and why; reasons that name nobody are left out. */
export function apartOf(commodity: Commodity, { commodities, odours }: Catalogue): Apart[] {
  const others = [...commodities.values()].filter(({ id }) => id !== commodity.id);
  const ids = (all: readonly Commodity[]) => all.map(({ id }) => id);
  const has = (id: string) => commodities.has(id) || id === dairy;
  const reasons: Apart[] = [
    { because: "gas from", kinds: harmedByEthylene(commodity) ? ids(others.filter(givesMuchEthylene)) : [] },
    {
      because: "gas to",
      // Those that give off much themselves are told of from their own side.
      kinds: givesMuchEthylene(commodity)
        ? ids(others.filter((each) => harmedByEthylene(each) && !givesMuchEthylene(each)))
        : [],
    },
    {
      because: "smell from",
      kinds: odours.filter(({ taker }) => taker === commodity.id).map(({ giver }) => giver),
    },
    {
      because: "smell to",
      kinds: odours.filter(({ giver }) => giver === commodity.id).map(({ taker }) => taker),
    },
  ];
  return reasons
    .map(({ because, kinds }) => ({ because, kinds: named(kinds.filter(has)) }))
    .filter(({ kinds }) => kinds.length > 0);
}
