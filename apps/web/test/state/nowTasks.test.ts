import type { PlaceView, PreparationView } from "@keepwright/handout";
import { ordinaryKitchens } from "@keepwright/planner";
import { describe, expect, it } from "vitest";
import { lineKeys } from "../../src/state/lineKeys.js";
import { isDone, nowTasks } from "../../src/state/nowTasks.js";
import type { ReadLine } from "../../src/state/readLots.js";

const kitchen = ordinaryKitchens.ordinary;
const cold = kitchen.places.find(({ refrigerator }) => refrigerator !== undefined)!.id;
const warm = kitchen.places.find(({ refrigerator }) => refrigerator === undefined)!.id;

const place = (id: string, lots: readonly string[], setting?: string): PlaceView => ({
  place: id,
  name: `The ${id}`,
  kind: "counter",
  setting,
  air: "",
  room: "",
  line: "",
  taken: 0.5,
  entries: lots.map((lot) => ({ lot, name: lot, amount: "1", wrap: "loose", line: `${lot}: loose` })),
  later: [],
});
const task = (name: PreparationView["task"], lots: readonly string[], now = true): PreparationView => ({
  task: name,
  lots,
  line: `${name} ${lots}`,
  what: name,
  why: "",
  now,
  commonPractice: false,
});
const lineOf = (lot: string) => `line of ${lot}`;
const view = {
  places: [place(warm, ["a"]), place(cold, ["b", "c"], "Open the vent.")],
  preparation: [task("dry well", ["a", "c"]), task("leave whole", ["b"], false)],
};

describe("what to do now", () => {
  it("is vents, then what is done to things, then putting away: the refrigerator first", () => {
    const tasks = nowTasks({ view, kitchen, lineOf });
    expect(tasks.map(({ kind, what }) => [kind, what])).toEqual([
      ["vent", "Open the vent."],
      ["prepare", "dry well"],
      ["put away", `The ${cold}`],
      ["put away", `The ${warm}`],
    ]);
  });

  it("asks for no vent of a place where nothing lies", () => {
    const empty = { ...view, places: [place(cold, [], "Open the vent.")] };
    expect(nowTasks({ view: empty, kitchen, lineOf }).map(({ kind }) => kind)).toEqual(["prepare"]);
  });

  it("stays ticked when the same is worked out again, and is asked for again once another lot joins it", () => {
    const done = new Set(nowTasks({ view, kitchen, lineOf }).flatMap(({ keys }) => keys));
    const again = nowTasks({ view: structuredClone(view), kitchen, lineOf });
    expect(again.map((one) => isDone(one, done))).toEqual([true, true, true, true]);
    const joined = { ...view, preparation: [task("dry well", ["a", "c", "d"])] };
    expect(nowTasks({ view: joined, kitchen, lineOf }).map((one) => isDone(one, done))).toEqual([
      true,
      false,
      true,
      true,
    ]);
  });

  it("is not done with a thing that a new plan puts elsewhere", () => {
    const done = new Set(nowTasks({ view, kitchen, lineOf }).flatMap(({ keys }) => keys));
    const moved = { ...view, places: [place(warm, []), place(cold, ["b", "c", "a"], "Open the vent.")] };
    const tasks = nowTasks({ view: moved, kitchen, lineOf });
    expect(tasks.filter((one) => !isDone(one, done)).map(({ what }) => what)).toEqual([`The ${cold}`]);
  });
});

describe("keys of lines", () => {
  const line = (id: string, key: string) => ({ key, lot: { id } }) as ReadLine;
  const parts = (...ids: string[]) =>
    ({ lots: ids.map((id) => ({ id, lot: id.split("/")[0] })) }) as Parameters<typeof lineKeys>[0];

  it("stay with the line when lines are added before it, part by part", () => {
    const before = lineKeys(parts("lot-1", "lot-1/2"), [line("lot-1", "3 avocados#0")]);
    const after = lineKeys(parts("lot-2", "lot-2/2"), [
      line("lot-1", "2 kg apples#0"),
      line("lot-2", "3 avocados#0"),
    ]);
    expect([before("lot-1"), before("lot-1/2")]).toEqual(["3 avocados#0", "3 avocados#0/2"]);
    expect([after("lot-2"), after("lot-2/2")]).toEqual(["3 avocados#0", "3 avocados#0/2"]);
  });

  it("are the lot's own id where its line is gone", () => {
    expect(lineKeys(parts("lot-1"), [])("lot-1")).toBe("lot-1");
  });
});
