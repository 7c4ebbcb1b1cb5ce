import { ordinaryKitchens, checkKitchen as plannersCheck } from "@keepwright/planner";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Unused } from "../../src/storage/check.js";
import { checkKitchen } from "../../src/storage/checkKitchen.js";
import { wholeKitchens } from "../../src/storage/wholeKitchens.js";

function checked(value: unknown) {
  const unused: Unused[] = [];
  const at = { field: "kitchen", report: (each: Unused) => unused.push(each) };
  const shaped = checkKitchen(value, at);
  return { kitchen: shaped && wholeKitchens.agrees(shaped, at) ? shaped : undefined, unused };
}

/** Every path to a value within. */
function paths(value: unknown, to: readonly (string | number)[] = []): (readonly (string | number)[])[] {
  if (typeof value !== "object" || value === null) return [to];
  const inside = Object.entries(value).flatMap(([key, each]) => paths(each, [...to, key]));
  return [...(to.length > 0 ? [to] : []), ...inside];
}

/** A copy in which one value is another, or gone. */
function spoiled(value: unknown, [key, ...rest]: readonly (string | number)[], by: unknown): unknown {
  if (key === undefined) return by;
  const copy: Record<string | number, unknown> | unknown[] = Array.isArray(value)
    ? [...value]
    : { ...(value as object) };
  const inside = (copy as Record<string | number, unknown>)[key];
  (copy as Record<string | number, unknown>)[key] = spoiled(inside, rest, by);
  return copy;
}

const kitchen = fc.constantFrom(...Object.values(ordinaryKitchens));
const spoiling = kitchen.chain((each) =>
  fc.record({
    kitchen: fc.constant(each),
    path: fc.constantFrom(...paths(each)),
    by: fc.oneof(
      fc.anything(),
      fc.constantFrom(undefined, "", "choose", "counter", -1, 0, 3, 46, 500, 1e9, Number.NaN, true, [], {}),
      fc.double({ min: -50, max: 2500 }),
    ),
  }),
);

describe("a kitchen at the door of the page", () => {
  it("is taken when it is an ordinary one, and with usual values where they are left out", () => {
    for (const each of Object.values(ordinaryKitchens)) {
      expect(checked(each)).toEqual({ kitchen: each, unused: [] });
      const [first, ...others] = each.places;
      const { temperatureSpread: _, ...place } = first as (typeof each.places)[number];
      const { kitchen: mended } = checked({ ...each, places: [place, ...others] });
      expect(mended?.places[0]?.temperatureSpread).toBe(1);
    }
  });

  it("is taken or not as the planner takes it, whatever was done to it", () => {
    fc.assert(
      fc.property(spoiling, ({ kitchen: whole, path, by }) => {
        const given = spoiled(whole, path, by);
        const planners = plannersCheck(given);
        const own = checked(given);
        const unknownFields = own.unused.some(({ wanted }) => wanted.want === "nothing");
        // A field that nobody knows is left out here, where the planner refuses the whole.
        if (!unknownFields) expect(own.kitchen !== undefined).toBe(planners.ok);
        if (planners.ok) expect(own.kitchen).toEqual(planners.kitchen);
        expect(own.kitchen === undefined && own.unused.length === 0).toBe(false);
      }),
      { numRuns: 500 },
    );
  });

  it("loses a field that nobody knows, and says so", () => {
    const { small } = ordinaryKitchens;
    const { kitchen: taken, unused } = checked({ ...small, colour: "green" });
    expect(taken).toEqual(small);
    expect(unused).toEqual([{ field: "kitchen.colour", value: '"green"', wanted: { want: "nothing" } }]);
  });

  it("is refused when its parts contradict one another, in the planner's words", () => {
    const { small } = ordinaryKitchens;
    const { kitchen: taken, unused } = checked({ ...small, room: { ...small.room, temperature: 2 } });
    expect(taken).toBeUndefined();
    expect(unused[0]?.wanted.want).toBe("agreement");
  });
});
