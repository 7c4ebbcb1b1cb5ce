import { catalogue } from "@keepwright/catalogue";
import {
  classSayer,
  classWords,
  englishLanguage,
  ethyleneWords,
  humidityWords,
  languageFor,
  limitWords,
  massWords,
  roomWords,
  spanishLanguage,
  speaker,
  temperatureWords,
  toldParts,
} from "@keepwright/handout";
import { celsiusFromFahrenheit } from "@keepwright/quantities";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ownUnitFirst } from "../../src/words/ownUnitFirst.js";

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
    [0.3, "metric", "1 g"],
    [5.4, "metric", "5 g"],
    [120, "us", "4 oz"],
    [204, "us", "7 oz"],
    [50, "us", "2 oz"],
    [43, "us", "1.5 oz"],
    [6, "us", "0.25 oz"],
    [1, "us", "0.25 oz"],
    [907, "us", "2 lb"],
  ] as const)("%f g in %s units is %s", (grams, units, expected) => {
    expect(
      massWords(english, units, grams)
        .replaceAll(" ", " ")
        .replace(/(\d)([a-z])/, "$1 $2"),
    ).toBe(expected);
  });

  it("parts of a sum add up to it as told, in either unit, none further off than a step", () => {
    const mass = fc.double({ min: -400, max: 400, noNaN: true });
    fc.assert(
      fc.property(
        fc.array(mass, { minLength: 1, maxLength: 5 }),
        fc.constantFrom("metric", "us"),
        (parts, units) => {
          const whole = parts.reduce((sum, one) => sum + one, 0);
          const told = toldParts(units, whole, parts);
          expect(told.parts.reduce((sum, one) => sum + one, 0)).toBeCloseTo(told.whole, 6);
          const most = Math.max(Math.abs(whole), ...parts.map(Math.abs));
          const step = units === "us" ? (most >= 431 ? 46 : 29) : most >= 950 ? 100 : 10;
          for (const [index, part] of parts.entries())
            expect(Math.abs(told.parts[index]! - part)).toBeLessThanOrEqual(step);
        },
      ),
    );
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

describe("limits of food safety in words", () => {
  const temperatures = [...catalogue().safety.values()].filter(({ unit }) => unit === "°C");

  it("are those published, in °F too, and never converted", () => {
    expect(temperatures.length).toBeGreaterThan(4);
    for (const { id, value, fahrenheit, text } of temperatures) {
      expect(fahrenheit, id).toBeDefined();
      expect(text, id).toContain(`${fahrenheit} °F`);
      // The same limit but for what the publication rounded: less than half a degree Celsius.
      expect(Math.abs(celsiusFromFahrenheit(fahrenheit!) - value), id).toBeLessThan(0.5);
      expect(limitWords(english, "us", { value, fahrenheit })).toBe(`${fahrenheit} °F`);
      expect(limitWords(english, "metric", { value, fahrenheit })).toBe(`${english.number(value)} °C`);
    }
  });

  it("stand in the audience's unit first, wherever both are told", () => {
    const told = (tag: string, messages: Readonly<Record<string, string>>) =>
      Object.keys(messages).map((key) => ownUnitFirst(tag, messages[key]!));
    for (const [metric, us, messages] of [
      ["en-GB", "en-US", { ...englishLanguage.messages, ...classWords.en }],
      ["es-419", "es-US", { ...spanishLanguage.messages, ...classWords.es }],
    ] as const) {
      const both = Object.values<string>(messages).filter((text) => /\d °C/.test(text) && /\d °F/.test(text));
      expect(both.length).toBeGreaterThan(5);
      for (const text of told(metric, messages)) expect(text).not.toMatch(/°F\b.{0,8}\d °C|inch(es)? \(\d/);
      for (const text of told(us, messages)) {
        expect(text).not.toMatch(/°C\b.{0,8}\d °F|cm \(\d/);
        expect(text.match(/\d+(\.\d+)?/g)?.sort()).toEqual(
          told(metric, messages)
            .find((one) => ownUnitFirst(us, one) === text)
            ?.match(/\d+(\.\d+)?/g)
            ?.sort(),
        );
      }
    }
    const american = speaker(languageFor("en", "us"));
    expect(american.say("caution.cut-ready-to-eat")).toContain("41 °F (5 °C)");
    expect(american.say("caution.cut-produce")).toContain("90 °F or 32 °C");
    expect(american.say("caution.mould-firm")).toContain("1 inch (2.5 cm)");
    expect(speaker(languageFor("es", "us")).say("caution.refrigerator-too-warm")).toContain("40 °F (4.4 °C)");
    expect(classSayer("es", "es-US")("size.cut", { centimetres: "2.5" })).toBe("1 pulgada (2.5 cm)");
  });
});
