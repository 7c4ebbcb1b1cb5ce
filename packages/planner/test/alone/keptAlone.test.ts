import { describe, expect, it } from "vitest";
import { type AloneAnswer, keptAlone } from "../../src/alone/keptAlone.js";
import { lot, request, smallKitchen, withPlace } from "../support.js";

const alone = (kind: string, grams: number, kitchen?: unknown) =>
  keptAlone(request([lot(kind, grams)], kitchen));
const inKind = (places: readonly AloneAnswer[], kind: string) =>
  places.find(({ stays }) => stays[0]!.placeKind === kind)!;
const placeOf = ({ stays }: AloneAnswer) => stays.map(({ placeKind }) => placeKind).join(" > ");

describe("a lot alone in a kitchen", () => {
  it("is wrapped as suits it: no apple is shut in with its own ethylene for the sake of smells", () => {
    const { best, inEachKind } = alone("apple", 180);
    expect(placeOf(best)).toBe("refrigerator shelf");
    expect(best.stays[0]!.wrap).toBe("none");
    const [shelf, door] = ["refrigerator shelf", "refrigerator door"].map((kind) => inKind(inEachKind, kind));
    expect(shelf!.life.middle).toBeGreaterThan(door!.life.middle);
    for (const { stays } of inEachKind)
      expect(["closed film bag", "lidded box"]).not.toContain(stays[0]!.wrap);
  });

  it("lives as long in a drawer as on the shelf above where both are as cold and it is bagged", () => {
    const { inEachKind } = alone("sweet-pepper", 150);
    const [shelf, drawer] = ["refrigerator shelf", "crisper drawer"].map((kind) => inKind(inEachKind, kind));
    expect(drawer!.stays[0]!.wrap).not.toBe("none");
    expect(drawer!.life.middle / shelf!.life.middle).toBeCloseTo(1, 1);
  });

  it("belongs where it can be eaten longest when nothing spoils the eating", () => {
    for (const [kind, grams] of [
      ["orange", 200],
      ["apple", 200],
      ["spinach", 200],
    ] as const) {
      const { best, inEachKind } = alone(kind, grams);
      expect(best.effects).toEqual([]);
      expect(best.life.middle).toBeGreaterThan(0.9 * inEachKind[0]!.life.middle);
    }
  });

  it("belongs where the eating is not spoilt, though it would live longer elsewhere", () => {
    for (const [kind, grams, effect] of [
      ["potato", 170, "sweetening"],
      ["cherry-tomato", 250, "flavour loss"],
    ] as const) {
      const { best, inEachKind } = alone(kind, grams);
      const shelf = inKind(inEachKind, "refrigerator shelf");
      expect(shelf.life.middle).toBeGreaterThan(best.life.middle);
      expect(shelf.effects).toContain(effect);
      expect(best.effects).toEqual([]);
      expect(placeOf(best)).toBe("cool dark cupboard");
    }
  });

  it("comes last in places where it never gets ripe, and says so", () => {
    const { inEachKind } = alone("avocado", 200);
    const ready = inEachKind.map(({ readyOnDay }) => readyOnDay !== null);
    expect(ready).toEqual([...ready].sort((one, other) => Number(other) - Number(one)));
    expect(ready).toContain(false);
  });

  it("goes only where there is room for it", () => {
    const { best, inEachKind } = alone("watermelon", 6000);
    expect(inEachKind.map(placeOf)).not.toContain("refrigerator door");
    expect(placeOf(best)).not.toBe("refrigerator door");
    const tiny = smallKitchen({ places: smallKitchen().places.map((place) => ({ ...place, litres: 1 })) });
    expect(alone("watermelon", 6000, tiny).inEachKind).toHaveLength(3);
  });

  it("is told the best of two places of one kind", () => {
    const kitchen = smallKitchen();
    const cold = { ...kitchen.places[0]!, id: "lower", name: "Lower shelf", temperature: 1 };
    const { inEachKind } = alone("carrot", 500, { ...kitchen, places: [...kitchen.places, cold] });
    expect(inKind(inEachKind, "refrigerator shelf").stays[0]!.place).toBe("lower");
  });

  it("has the settings of the vents it needs, and no others", () => {
    const kitchen = withPlace(smallKitchen(), "counter", { litres: 40 });
    const { inEachKind } = alone("spinach", 200, kitchen);
    for (const { stays, vents } of inEachKind) {
      expect(vents.map(({ place }) => place)).toEqual(
        stays.map(({ place }) => place).filter((place) => place === "left-drawer"),
      );
    }
  });

  it("is one lot", () => {
    expect(() => keptAlone(request([lot("apple", 180), lot("kale", 200)]))).toThrow(/2 lots.*exactly one/);
  });
});
