// Planning again after a correction against planning from nothing: 30 lots in 8 places, one lot corrected at a time (an amount, days, "I moved it").
// Processor time, and the value of both plans. One JSON line a kind of correction. Needs built packages.
import { planAgain, planHaul, planInHand } from "@keepwright/planner";
import { eightPlaces, quantile, requestOf, timed } from "./lib/requests.mjs";

const request = requestOf(30, eightPlaces, { people: 4 });
const { lots } = request.haul;
const inHand = planInHand(request);
const changed = (index, changes) => ({
  ...request,
  haul: { lots: lots.map((lot, at) => (at === index ? { ...lot, ...changes } : lot)) },
});
const shelf = eightPlaces.places.find(({ kind }) => kind === "refrigerator shelf").id;
const corrections = {
  "an amount": (index) => changed(index, { grams: Math.round(1.4 * lots[index].grams) }),
  "two days older": (index) => changed(index, { extraDays: 2 }),
  "moved to the shelf": (index) => ({
    ...request,
    arrangement: { version: 1, lots: [{ lot: lots[index].id, place: shelf, wrap: "none" }] },
  }),
};

planAgain(inHand, corrections["an amount"](0));
for (const [correction, correct] of Object.entries(corrections)) {
  const rows = lots.map((_, index) => {
    const asked = correct(index);
    const again = timed(() => planAgain(inHand, asked));
    const { arrangement, ...free } = asked;
    // What was moved cannot be planned from nothing by the same rules: its value is compared with that of the plan in hand.
    const anew = arrangement ? { cpu: Number.NaN, value: inHand.plan } : timed(() => planHaul(free));
    return {
      again: again.cpu,
      wall: again.wall,
      anew: anew.cpu,
      worse: again.value.plan.objective.total / anew.value.objective.total - 1,
    };
  });
  const of = (name, share) =>
    quantile(
      rows.map((row) => row[name]),
      share,
    );
  console.log(
    JSON.stringify({
      bench: "planning again",
      correction,
      lots: lots.length,
      places: eightPlaces.places.length,
      againMilliseconds: { median: of("again", 0.5), ninetieth: of("again", 0.9), most: of("again", 1) },
      wallMilliseconds: { median: of("wall", 0.5), most: of("wall", 1) },
      anewMilliseconds: of("anew", 0.5),
      valueAgainstAnew: {
        median: of("worse", 0.5),
        most: of("worse", 1),
        noWorse: rows.filter(({ worse }) => worse <= 1e-9).length,
      },
    }),
  );
}
