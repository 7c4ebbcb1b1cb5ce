import { describe, expect, it } from "vitest";
import { answerDocument } from "../../src/class/answerDocument.js";
import { kindSlide } from "../../src/class/slides/kindSlides.js";
import { contextOf, spanish } from "./support.js";

/** Kinds with every reason for which a longer life is passed over: taste, ripening, damp, lateness, little gain; and kinds with none. */
const kinds =
  "potato sweet-potato banana tomato onion basil cucumber apple avocado kiwifruit asian-pear".split(" ");
const context = contextOf(kinds);
const inSpanish = contextOf(kinds, { audience: spanish });
const slideOf = (id: string, from = context) => kindSlide(from, answerDocument(from, id));

type Shown = ReturnType<typeof slideOf>;
const pairsOf = ({ parts: [first] }: Shown) => (first?.part === "pairs" ? first.rows : []);
const seriesOf = ({ chart }: Shown, name: RegExp) => chart!.series.find((one) => name.test(one.name));
const barsOf = ({ chart }: Shown) =>
  chart!.categories.map((name, at) => {
    const [series, ...more] = chart!.series.filter(({ values }) => values[at] !== null);
    expect(more, name).toEqual([]);
    return { name, days: series!.values[at]!, fill: series!.fill, series: series!.name };
  });

const inRefrigerator = /^(everywhere in the|todo el) refrigera/m;
const cold = /refrigera|drawer|cajón/i;

describe("the slide of a kind", () => {
  it.each(kinds)("%s: the place advised is the one bar that is filled, and says so in words", (id) => {
    for (const [from, here] of [
      [context, "Goes here: "],
      [inSpanish, "Va aquí: "],
    ] as const) {
      const slide = slideOf(id, from);
      const [home, ...others] = barsOf(slide);
      const where = pairsOf(slide)[0]!.text;
      expect(home).toMatchObject({ name: `${here}${where}`, fill: "full" });
      expect(home!.days).toBe(Math.round(from.answer(id).belongs.life.middle));
      for (const bar of others) {
        expect(bar.fill).toBe(bar.name.endsWith(" †") ? "hatched" : "empty");
        expect(bar.fill === "hatched").toBe(/^† /.test(bar.series));
      }
    }
  });

  it.each(kinds)("%s: whatever bar is longer, or not advised, has its reason on the slide", (id) => {
    for (const from of [context, inSpanish]) {
      const slide = slideOf(id, from);
      const said = pairsOf(slide)
        .map(({ text }) => text)
        .slice(1)
        .join("\n")
        .toLowerCase();
      const [home, ...others] = barsOf(slide);
      for (const { name, days } of others)
        if (days > home!.days || name.endsWith("†"))
          expect(
            inRefrigerator.test(said) && cold.test(name) ? name.toLowerCase() : said,
            `${id}: ${name}`,
          ).toContain(name.replace(" †", "").toLowerCase());
      expect(slide.chart!.alt).toContain(home!.name);
    }
  });

  it("names the very reason: taste, damp, ripening, lateness, little gain", () => {
    const elsewhere = (id: string) => pairsOf(slideOf(id)).find(({ name }) => name === "Elsewhere")?.text;
    expect(elsewhere("potato")).toMatch(
      /^Everywhere in the refrigerator †: worse to eat there: a sweet taste\.$/,
    );
    expect(elsewhere("onion")).toMatch(
      /^Everywhere in the refrigerator †: too damp for bulbs\.\nCounter: longer, but/,
    );
    expect(elsewhere("avocado")).toMatch(/refrigerator.*†: no ripening there\./);
    expect(elsewhere("kiwifruit")).toMatch(/refrigerator.*: ready to eat only after \d+ days or more\./);
    expect(elsewhere("asian-pear")).toMatch(/drawer: hardly longer\./);
    expect(elsewhere("apple")).toMatch(/drawer: longer, but less good to eat meanwhile\./);
    expect(elsewhere("cucumber")).toBeUndefined();
  });

  it("names where the reasons come from, and the price where it has one at its best place too", () => {
    expect(slideOf("tomato").sources.join("\n")).toContain("What is worse to eat: ");
    expect(slideOf("onion").sources.join("\n")).toContain("Out of the refrigerator: ");
    const banana = pairsOf(slideOf("banana")).map(({ text }) => text);
    expect(banana.join("\n")).toContain("The eating suffers: brown skin.");
    expect(banana.join("\n")).not.toContain("worse to eat there: brown skin");
    expect(seriesOf(slideOf("banana"), /Not advised/)?.fill).toBe("hatched");
  });
});
