import {
  type Kitchen,
  kitchenBounds,
  type Place,
  placeKinds,
  type Refrigerator,
  ventSettings,
  wrapIds,
} from "@keepwright/planner";
import { type Check, choice, either, flag, group, list, number, text, unusable } from "./check.js";

/**
 * A kitchen of the right shape: the planner's schema of a kitchen once more, by hand: the schema library is not in the page, and what was kept has to be checked before the
 * first screen is drawn. A test holds the two against one another. Whether the
 * parts of a kitchen agree with one another is not a matter of shape: `wholeKitchens` says so, and comes after the first paint.
 */
const { celsius: coldest, humidity, litres } = kitchenBounds;
const celsius = number(coldest.least, coldest.most);
const identifier = text(60);
const above = (most: number) => number(0, most, { above: true });
const anyRate = above(Number.MAX_VALUE);

const place = group<Place>(
  {
    id: identifier,
    name: text(80),
    kind: choice(placeKinds),
    temperature: celsius,
    temperatureSpread: number(0, 10),
    litres: above(litres.most),
    refrigerator: identifier,
    airChangesPerHour: either<unknown>(above(1000), group({ open: anyRate, half: anyRate, closed: anyRate })),
    vent: choice(["choose", ...ventSettings]),
    lit: flag,
  },
  { optional: ["refrigerator", "airChangesPerHour", "vent"], usual: { temperatureSpread: 1 } },
);

const refrigerator = group<Refrigerator>({
  id: identifier,
  litres: above(litres.most),
  temperature: celsius,
  airChangesPerHour: above(20),
  coil: group({ temperature: number(-40, 10), airChangesPerHour: number(0, 200) }),
});

const version: Check<1> = (value, at) =>
  value === 1 ? value : unusable(value, at, { want: "choice", choices: ["1"] });

const mostWraps = 100;
export const checkKitchen = group<Kitchen>({
  version,
  name: text(120),
  room: group(
    {
      temperature: celsius,
      relativeHumidity: number(humidity.least, humidity.most),
      ethylene: number(0, 100),
    },
    { usual: { ethylene: 0.02 } },
  ),
  refrigerators: list(refrigerator, 0, 4),
  places: list(place, 1, 15),
  wraps: list(choice(wrapIds.filter((wrap) => wrap !== "none")), 0, mostWraps),
});
