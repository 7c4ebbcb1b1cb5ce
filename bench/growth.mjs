// How the planner's time grows with the haul: 10 to 80 lots in ten places. A request names 60 at most, so lots of two are put together and only the search is
// timed. Processor time, the least of a few, and the slope of a straight line through the logarithms: 2 would be quadratic. Reads the built planner from inside.
import { bindProblem } from "@keepwright/planner";
import { prepare } from "../packages/planner/dist/search/prepare.js";
import { searchPlan } from "../packages/planner/dist/search/searchPlan.js";
import { requestOf, tenPlaces, timed } from "./lib/requests.mjs";

const counts = [10, 20, 30, 40, 50, 60, 80];
const steps = [7, 5, 11];
const repeats = 2;

function problemOf(count, step) {
  const people = Math.max(2, Math.round(count / 8));
  const half = Math.ceil(count / 2);
  const [first, second] = [
    requestOf(half, tenPlaces, { step, people }),
    requestOf(count - half, tenPlaces, { step, people, start: half * step }),
  ].map(bindProblem);
  return { ...first, lots: [...first.lots, ...second.lots].map((lot, index) => ({ ...lot, index })) };
}

const least = (count, step) =>
  Math.min(
    ...Array.from({ length: repeats }, () => {
      const prepared = prepare(problemOf(count, step));
      return timed(() => searchPlan(prepared)).cpu;
    }),
  );
for (const step of steps) least(20, step);
const points = counts.map((lots) => {
  const times = steps.map((step) => least(lots, step));
  return { lots, milliseconds: times.reduce((sum, time) => sum + time, 0) / times.length };
});
const logs = points.map(({ lots, milliseconds }) => [Math.log(lots), Math.log(milliseconds)]);
const mean = (at) => logs.reduce((sum, point) => sum + point[at], 0) / logs.length;
const [x, y] = [mean(0), mean(1)];
const slope =
  logs.reduce((sum, point) => sum + (point[0] - x) * (point[1] - y), 0) /
  logs.reduce((sum, point) => sum + (point[0] - x) ** 2, 0);
console.log(
  JSON.stringify({ bench: "growth with the haul", places: 10, hauls: steps.length, points, slope }),
);
