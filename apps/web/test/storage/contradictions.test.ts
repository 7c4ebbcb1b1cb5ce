import { sayer } from "@keepwright/handout";
import { contradictionKinds, contradictions, type Kitchen, ordinaryKitchens } from "@keepwright/planner";
import { describe, expect, it } from "vitest";
import { unusedLine } from "../../src/components/settings/UnusedList.js";
import type { Unused } from "../../src/storage/check.js";
import { wholeKitchens } from "../../src/storage/wholeKitchens.js";
import { settingsEnglish } from "../../src/words/english/settings.js";
import { settingsSpanish } from "../../src/words/spanish/settings.js";

const good = ordinaryKitchens.ordinary;
const [refrigerator] = good.refrigerators;
const of = (kind: string) => good.places.find((place) => place.kind === kind)!;
const withPlace = (place: object): Kitchen => ({
  ...good,
  places: [...good.places, place as Kitchen["places"][number]],
});
const withRefrigerator = (change: object): Kitchen => ({
  ...good,
  refrigerators: [{ ...refrigerator!, ...change }],
});
const counter = { ...of("counter"), id: "new", name: "New" };
const drawer = { ...of("crisper drawer"), id: "new", name: "New" };
const shelf = { ...of("refrigerator shelf"), id: "new", name: "New", litres: 0.5 };
const { vent: _, ...noVent } = drawer;
const { refrigerator: __, ...nowhere } = shelf;

/** A kitchen for every way in which one can contradict itself. */
const kitchens: Readonly<Record<(typeof contradictionKinds)[number], Kitchen>> = {
  "same id": withPlace({ ...counter, id: good.places[0]!.id }),
  "kitchen without a name": { ...good, name: " " },
  "place without a name": withPlace({ ...counter, name: "\u200b" }),
  "same name": withPlace({ ...counter, name: good.places[0]!.name }),
  "in no refrigerator": withPlace(nowhere),
  "not for a refrigerator": withPlace({ ...counter, temperature: 4, refrigerator: refrigerator!.id }),
  "unknown refrigerator": withPlace({ ...shelf, refrigerator: "other" }),
  "vent without rates": withPlace({ ...drawer, airChangesPerHour: 1 }),
  "rates without vent": withPlace(noVent),
  "rates out of order": withPlace({ ...drawer, airChangesPerHour: { open: 1, half: 2, closed: 3 } }),
  "place freezes": withPlace({ ...shelf, temperature: -5 }),
  "as warm as the room": withPlace({ ...shelf, temperature: 25 }),
  "warmer than the room": withPlace({ ...counter, temperature: 40 }),
  "colder than the room": withPlace({ ...counter, temperature: 1 }),
  lit: withPlace({ ...of("cool dark cupboard"), id: "new", name: "New", lit: true }),
  "more room than air": withPlace({ ...shelf, litres: 900 }),
  "larger than the refrigerator": withPlace({ ...drawer, litres: 900 }),
  "refrigerator as warm as the room": withRefrigerator({ temperature: 30 }),
  "refrigerator freezes": withRefrigerator({ temperature: -8 }),
  "coil warmer than the air": withRefrigerator({ coil: { ...refrigerator!.coil, temperature: 9 } }),
};
const english = sayer<typeof settingsEnglish>("en", settingsEnglish);
const spanish = sayer<typeof settingsEnglish>("es", settingsSpanish);

describe("a kitchen in a file that contradicts itself", () => {
  it("does not, as it is", () => expect(contradictions(good)).toEqual([]));

  it.each(contradictionKinds)("is told in both languages, with its own values: %s", (because) => {
    const told: Unused[] = [];
    const agrees = wholeKitchens.agrees(kitchens[because], {
      field: "kitchens[1]",
      report: (one) => told.push(one),
    });
    expect(agrees).toBe(false);
    const mine = told.filter(({ wanted }) => wanted.want === "agreement" && wanted.because === because);
    expect(mine).toHaveLength(1);
    for (const say of [english, spanish]) {
      const line = unusedLine(say, mine[0]!);
      expect(line).toMatch(/^kitchens\[1\]: ./);
      expect(line).not.toMatch(/[{}]|undefined/);
    }
    expect(unusedLine(spanish, mine[0]!)).not.toBe(unusedLine(english, mine[0]!));
  });
});
