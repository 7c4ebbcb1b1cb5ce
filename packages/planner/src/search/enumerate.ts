import { type VentSetting, ventSettings } from "../problem/kitchen.js";
import type { Choice, Part } from "../problem/programme.js";
import type { Prepared } from "./prepare.js";

/** Choices judged one by one, at most: more takes longer than the search. */
const mostEnumerated = 400;

/** Every way to leave a lot whole or to part it in two. */
function divisions({ problem, options }: Prepared, lot: number): Part[][] {
  const { portions, splitUnit } = problem.lots[lot]!;
  const programmes = options(lot).map(({ programme }) => programme);
  const whole = programmes.map((programme) => [{ lot, portions, programme }]);
  const firsts = Array.from(
    { length: Math.ceil(portions / splitUnit) - 1 },
    (_, index) => (index + 1) * splitUnit,
  );
  const parted = firsts.flatMap((first) =>
    programmes.flatMap((one) =>
      programmes
        .filter((other) => other !== one)
        .map((other) => [
          { lot, portions: first, programme: one },
          { lot, portions: portions - first, programme: other },
        ]),
    ),
  );
  return [...whole, ...parted];
}

function divisionCount({ problem, options }: Prepared, lot: number): number {
  const { portions, splitUnit } = problem.lots[lot]!;
  const ways = options(lot).length;
  return ways + (Math.ceil(portions / splitUnit) - 1) * ways * (ways - 1);
}

const everyWay = <Item>(lists: readonly (readonly Item[])[]): Item[][] =>
  lists.reduce<Item[][]>((ways, list) => ways.flatMap((way) => list.map((item) => [...way, item])), [[]]);

/** Every choice with each lot whole or in two parts, where that is few enough to judge them all; none otherwise. */
export function everyChoice(prepared: Prepared): Choice[] {
  const { lots, vents } = prepared.problem;
  const count = lots.reduce(
    (product, { index }) => product * divisionCount(prepared, index),
    ventSettings.length ** vents.length,
  );
  if (count > mostEnumerated) return [];
  const arrangements = everyWay(lots.map(({ index }) => divisions(prepared, index)));
  const settings = everyWay<VentSetting>(vents.map(() => ventSettings));
  return settings.flatMap((set) => arrangements.map((parts) => ({ parts: parts.flat(), vents: set })));
}
