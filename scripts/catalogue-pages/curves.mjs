import { lifeAt } from "@keepwright/handout";
import { produceFromCommodity, referenceEthylene } from "@keepwright/physics";

/** Temperatures of the chart against temperature [°C]. */
export const temperatures = Array.from({ length: 32 }, (_, index) => index - 1);
/** Humidities of the chart against humidity [%]. */
export const humidities = Array.from({ length: 15 }, (_, index) => 30 + 5 * index);
/** A cold refrigerator, the second temperature of the chart against humidity [°C]. */
export const refrigerator = 4;

export const middleOf = ({ low, high }) => (low + high) / 2;

/** Inferred humidities have digits that mean nothing; a half is as near as any is known. */
const toHalves = (percent) => Math.round(2 * percent) / 2;

/** Kinds that do not ripen are ready to eat as they come. */
const ready = 1;

/** Ripeness on arrival: 0 unripe, 1 ready to eat. */
export const ripenessOnArrival = (kind) => kind.ripening?.arrives.value ?? ready;

function lifeOf(kind) {
  const produce = produceFromCommodity(kind);
  const ripeness = ripenessOnArrival(kind);
  return (temperature, relativeHumidity) => {
    const { life } = lifeAt(produce, {
      temperature,
      relativeHumidity,
      ethylene: referenceEthylene,
      ripeness,
    });
    // Below the freezing point the harm counted as chilling is ice.
    const frozen = life.endedBy === "chilling" && temperature < kind.storage.freezingPoint.value;
    return { ...life, temperature, relativeHumidity, endedBy: frozen ? "freezing" : life.endedBy };
  };
}

/**
 * Lives of a kind [d: 10, 50 and 90 % are past their best by then] and what ends them, as it arrives, whole, bare, in the dark, in the
 * ethylene of ordinary stores: against temperature at the middle of the recommended humidity; against humidity at the middle of the
 * recommended temperature and in a refrigerator (one curve where both are the same).
 */
export function curvesOf(kind) {
  const { storage } = kind;
  const life = lifeOf(kind);
  const best = middleOf(storage.temperature);
  const humidity = toHalves(middleOf(storage.relativeHumidity));
  const fixed = best === refrigerator ? [best] : [best, refrigerator];
  return {
    humidity,
    best,
    byTemperature: temperatures.map((celsius) => life(celsius, humidity)),
    byHumidity: fixed.map((celsius) => ({
      temperature: celsius,
      points: humidities.map((percent) => life(celsius, percent)),
    })),
  };
}

/** Neighbouring points that end by the same, as stretches from the first to the last of them. */
export function stretches(points, position) {
  const found = [];
  for (const point of points) {
    const last = found.at(-1);
    if (last?.endedBy === point.endedBy) last.to = position(point);
    else found.push({ endedBy: point.endedBy, from: position(point), to: position(point) });
  }
  return found;
}
