// Invented hauls in an invented kitchen of eight boxes, for the benches of the stepper. Kinds are those of the catalogue.
import { catalogue } from "@keepwright/catalogue";
import { produceFromCommodity } from "@keepwright/physics";
import { seededRandom } from "@keepwright/quantities";

const drawer = (name, litresPerHour) => ({
  name,
  volumeLitres: 14,
  temperature: 4,
  exchange: { with: 0, litresPerHour },
});
const cupboard = (name) => ({
  name,
  volumeLitres: 40,
  temperature: 16,
  exchange: { with: "room", litresPerHour: 20 },
});
export const boxes = [
  {
    name: "refrigerator",
    volumeLitres: 200,
    temperature: 4,
    exchange: { with: "room", litresPerHour: 80 },
    coil: { temperature: -8, litresPerHour: 400 },
  },
  drawer("first drawer", 6),
  drawer("second drawer", 28),
  drawer("third drawer", 112),
  drawer("fourth drawer", 6),
  cupboard("first cupboard"),
  cupboard("second cupboard"),
  cupboard("third cupboard"),
];
export const room = { temperature: 20, relativeHumidity: 0.5, ethylene: 0.02 };
const wraps = ["none", "none", "none", "paper bag", "perforated bag", "closed film bag", "damp towel"];

/** Hauls and tried moves from one seed: the same on every machine. */
export function hauls(seed) {
  const random = seededRandom(seed);
  const pick = (list) => list[Math.floor(random() * list.length)];
  const produce = [...catalogue().commodities.values()].map(produceFromCommodity);
  const stay = (box, until = "never") => ({
    box,
    temperature: boxes[box].temperature,
    wrap: pick(wraps),
    lit: false,
    until,
  });
  /** A place for good; for kinds that ripen, half the time a cupboard until ripe and then the cold. */
  const stays = (kind) =>
    kind.ripening && random() < 0.5
      ? [stay(5 + Math.floor(random() * 3), "ripe"), stay(Math.floor(random() * 5))]
      : [stay(Math.floor(random() * boxes.length))];
  const lot = () => {
    const kind = pick(produce);
    return {
      produce: kind,
      kilograms: 0.2 + random(),
      form: { cut: false, tops: false, wet: false },
      ripeness: kind.ripening ? random() : 0,
      spent: 0.2 * random(),
      stays: stays(kind),
    };
  };
  return {
    haul: (lots) => Array.from({ length: lots }, lot),
    /** One lot of a haul put elsewhere. */
    move: (haul) => {
      const index = Math.floor(random() * haul.length);
      return { lot: index, to: { ...haul[index], stays: stays(haul[index].produce) } };
    },
  };
}

const none = catalogue().wraps.get("none");
const open = { ...none.vapourExchange, value: 100_000 };
/** Nothing around the lot, not even the still air of its own heap: what bench/lib/odexSystem.mjs integrates. */
export const openAir = new Map([["none", { ...none, vapourExchange: open, ethyleneExchange: open }]]);

/** Processor time of this process [ms]: other processes on the machine disturb it less than the clock on the wall. */
export const processorTime = () => process.cpuUsage().user / 1000;
