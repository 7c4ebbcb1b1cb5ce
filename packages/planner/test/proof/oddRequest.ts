import type { BoundLot } from "../../src/problem/bindHaul.js";
import { kitchenSchema, type Place, type Refrigerator } from "../../src/problem/kitchen.js";
import type { PlanRequest, Problem } from "../../src/problem/problem.js";
import type { Part } from "../../src/problem/programme.js";
import { everyWay } from "../../src/search/options.js";
import { Draw, randomRequest, type Size } from "../cases/randomRequest.js";

const wraps = [
  "paper bag",
  "perforated bag",
  "closed film bag",
  "damp towel",
  "beeswax cloth",
  "foil",
  "lidded box",
  "glass of water",
];

const oddRefrigerator = (draw: Draw, one: Refrigerator): Refrigerator => ({
  ...one,
  temperature: draw.one([-1, 0, 3, 7, 9, 12]),
  airChangesPerHour: draw.one([0.02, 0.1, 0.5, 2, 10]),
  coil: { temperature: draw.one([-20, -8, -2]), airChangesPerHour: draw.one([0, 1, 20, 150]) },
});

/** Other temperatures than the air around, next to no room, and air that hardly changes. */
const oddPlace = (draw: Draw, place: Place): Place => ({
  ...place,
  temperature: draw.chance(0.4) ? Math.max(-1, place.temperature + draw.between(-5, 5)) : place.temperature,
  litres: draw.chance(0.3) ? draw.one([0.3, 1, 3]) : place.litres,
  ...(place.vent === undefined && draw.chance(0.3) && { airChangesPerHour: draw.one([0.02, 0.3, 2]) }),
});

/** A request that no ordinary home would make, within what a kitchen is checked for: everything in it is invented. */
export function oddRequest(seed: number, size: Size): PlanRequest {
  const draw = new Draw(seed + 0.25);
  const request = randomRequest(seed, size);
  const { kitchen } = request;
  return {
    ...request,
    kitchen: kitchenSchema.parse({
      ...kitchen,
      room: {
        temperature: draw.between(18, 30),
        relativeHumidity: draw.between(15, 100),
        ethylene: draw.one([0, 0.001, 0.02, 0.3, 2, 20]),
      },
      refrigerators: kitchen.refrigerators.map((one) => oddRefrigerator(draw, one)),
      places: kitchen.places.map((place) => oddPlace(draw, place)),
      wraps: draw.chance(0.5) ? wraps : draw.some(wraps, 2),
    }),
  };
}

/** A lot in one to three parts, as its pieces allow, each dealt with anyhow. */
export function anyParts(draw: Draw, problem: Problem, lot: BoundLot): Part[] {
  const ways = everyWay(problem, lot);
  const units = Math.floor(lot.portions / lot.splitUnit);
  const parts: Part[] = [];
  let left = lot.portions;
  for (let more = draw.whole([1, Math.min(3, units)]); more > 0; more--) {
    const most = Math.floor(left / lot.splitUnit) - (more - 1);
    const portions = more === 1 ? left : lot.splitUnit * draw.whole([1, most]);
    parts.push({ lot: lot.index, portions, programme: draw.one(ways) });
    left -= portions;
  }
  return parts;
}
