import {
  ethyleneWords,
  humidityWords,
  massWords,
  roomWords,
  speaker,
  temperatureWords,
} from "@keepwright/handout";
import { describe, expect, it } from "vitest";

const english = speaker();

describe("amounts in words", () => {
  it.each([
    [4, "metric", "4 °C"],
    [-0.3, "metric", "0 °C"],
    [4.4, "us", "40 °F"],
    [21, "us", "70 °F"],
  ] as const)("%f °C in %s units is %s", (celsius, units, expected) => {
    expect(temperatureWords(english, units, celsius)).toBe(expected);
  });

  it.each([
    [300, "metric", "300 g"],
    [846, "metric", "850 g"],
    [1260, "metric", "1.3 kg"],
    [120, "us", "4.2 oz"],
    [907, "us", "2 lb"],
  ] as const)("%f g in %s units is %s", (grams, units, expected) => {
    expect(
      massWords(english, units, grams)
        .replaceAll(" ", " ")
        .replace(/(\d)([a-z])/, "$1 $2"),
    ).toBe(expected);
  });

  it("room is in litres or quarts", () => {
    expect(roomWords(english, "metric", 14)).toBe("14 L");
    expect(roomWords(english, "metric", 1.64)).toBe("1.6 L");
    expect(roomWords(english, "us", 14)).toBe("15 qt");
  });

  it("temperatures and masses may be in units of their own", () => {
    const british = { temperature: "metric", mass: "us" } as const;
    expect(temperatureWords(english, british, 4)).toBe("4 °C");
    expect(massWords(english, british, 907)).toMatch(/^2\slb$|^2lb$/);
    expect(roomWords(english, british, 14)).toBe("15 qt");
    const warm = { temperature: "us", mass: "metric" } as const;
    expect(temperatureWords(english, warm, 4)).toBe("39 °F");
    expect(massWords(english, warm, 1260)).toMatch(/^1\.3\s?kg$/);
    expect(roomWords(english, warm, 14)).toBe("14 L");
  });

  it("humidity is rounded to five, ethylene to one figure", () => {
    expect(humidityWords(english, 93)).toBe("95%");
    expect(humidityWords(english, 100)).toBe("99%");
    expect(ethyleneWords(english, 0.31)).toBe("0.3 µL/L");
    expect(ethyleneWords(english, 0.001)).toBe("less than 0.005 µL/L");
  });
});
