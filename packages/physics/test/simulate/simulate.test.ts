import { describe, expect, it } from "vitest";
import { simulate } from "../../src/simulate/simulate.js";
import { lot, simulation, stay } from "./kitchen.js";

describe("simulate", () => {
  const haul = [
    lot("leaf", 0.4, [stay(1)]),
    lot("root", 1, [stay(1, { wrap: "closed film bag" })]),
    lot("fruit", 1.5, [stay("room", { until: "ripe" }), stay(2)], { ripeness: 0.3 }),
    lot("tender", 0.6, [stay("room", { wrap: "paper bag", until: "ripe" }), stay(0)]),
    lot("berry", 0.3, [stay(2)]),
    lot("pod", 0.4, [stay(0, { until: { day: 2.1 } }), stay(3)]),
    lot("bulb", 1, [stay(4)]),
  ];
  it("shows", () => {
    for (const stepDays of [1, 0.5, 0.25, 0.05, 0.01]) {
      const out = simulate(simulation(haul, { stepDays }));
      console.log(
        stepDays,
        out.lots.map((l) => `${l.endDay.toFixed(4)} ${l.endedBy} ${l.ripeDay.toFixed(3)} ${l.stayStarts}`),
      );
      if (stepDays === 0.25)
        console.log(
          JSON.stringify(
            out.boxes.map((b) => [
              b.relativeHumidity.filter((_, i) => i % 5 === 0),
              b.ethylene.filter((_, i) => i % 5 === 0),
              b.condensed,
            ]),
          ),
        );
    }
    expect(1).toBe(1);
  });
});
