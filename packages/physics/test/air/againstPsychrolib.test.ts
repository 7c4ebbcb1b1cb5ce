import psychrolib from "psychrolib";
import { beforeAll, describe, expect, test } from "vitest";
import {
  dewPoint,
  humidityRatioFromVapourPressure,
  relativeHumidityFromVapourPressure,
  saturationPressure,
  standardPressure,
  vapourPressureDeficit,
  vapourPressureFromHumidityRatio,
  vapourPressureFromRelativeHumidity,
} from "../../src/index.js";
import { record } from "../published/record.js";

/** −10 … 40 °C in steps of 1 K: the range of kitchens and cold stores. */
const temperatures = Array.from({ length: 51 }, (_, step) => step - 10);
const humidities = [0.05, 0.3, 0.6, 0.9, 1];

/** psychrolib answers in its own bounded solver, good to 1e-3 K on dew points; the rest are closed forms. */
describe("humid air against the psychrolib package, −10…40 °C", () => {
  beforeAll(() => psychrolib.SetUnitSystem(psychrolib.SI));

  test("saturation pressure within 1e-6, and it is put on record", () => {
    const worst = temperatures.map((celsius) =>
      Math.abs(saturationPressure(celsius) / psychrolib.GetSatVapPres(celsius) - 1),
    );
    expect(Math.max(...worst)).toBeLessThan(1e-6);
    record(
      "air",
      [-10, 0, 5, 20, 40].map((celsius) => ({
        room: "air",
        what: `saturation pressure at ${celsius} °C`,
        model: saturationPressure(celsius),
        published: psychrolib.GetSatVapPres(celsius) as number,
        unit: "Pa",
        source: "psychrolib 1.1.1 (Hyland & Wexler 1983 as in ASHRAE Fundamentals)",
        fromMemory: false,
        use: "check" as const,
        tolerance: 1 + 1e-6,
      })),
    );
  });

  test("dew point within 0.002 K", () => {
    for (const celsius of temperatures) {
      for (const humidity of humidities) {
        const pressure = vapourPressureFromRelativeHumidity(humidity, celsius);
        expect(
          Math.abs(dewPoint(pressure) - psychrolib.GetTDewPointFromVapPres(celsius, pressure)),
        ).toBeLessThan(2e-3);
      }
    }
  });

  test("humidity ratio within 1e-6 and its inverse closes", () => {
    for (const celsius of temperatures) {
      const pressure = vapourPressureFromRelativeHumidity(0.7, celsius);
      const ratio = humidityRatioFromVapourPressure(pressure);
      expect(ratio / psychrolib.GetHumRatioFromVapPres(pressure, standardPressure) - 1).toBeCloseTo(0, 6);
      expect(vapourPressureFromHumidityRatio(ratio) / pressure).toBeCloseTo(1, 12);
    }
  });

  test("relative humidity and vapour pressure deficit", () => {
    for (const celsius of temperatures) {
      const pressure = 0.45 * saturationPressure(celsius);
      expect(relativeHumidityFromVapourPressure(pressure, celsius)).toBeCloseTo(
        psychrolib.GetRelHumFromVapPres(celsius, pressure),
        6,
      );
      const ratio = humidityRatioFromVapourPressure(pressure);
      const deficit = psychrolib.GetVaporPressureDeficit(celsius, ratio, standardPressure);
      expect(vapourPressureDeficit(celsius, 0.45) / deficit).toBeCloseTo(1, 5);
    }
  });
});
