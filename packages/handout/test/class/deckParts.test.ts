import { catalogue } from "@keepwright/catalogue";
import {
  type ClassKit,
  type ClassRequest,
  classDeck,
  type Deck,
  type DeckSlide,
  documentLines,
  heldParts,
  makeKit,
  minutesOfSlide,
  withSlides,
} from "@keepwright/handout";
import { describe, expect, it } from "vitest";
import { classRequest, spanish } from "./support.js";

const items = ["bananas", "romaine", "potatoes", "apples", "onions", "tomatoes"];
const languages = { English: {}, Spanish: { audience: spanish } } as const;
const kits = Object.fromEntries(
  Object.entries(languages).map(([name, changes]) => [
    name,
    makeKit(classRequest({ items, ...changes }), catalogue()),
  ]),
) as Record<keyof typeof languages, ClassKit>;

/** Only the running sheet and the slides depend on the minutes. */
const lasting = (kit: ClassKit, changes: Partial<ClassRequest>): ClassKit => ({
  ...kit,
  request: { ...kit.request, ...changes },
});
/** On paper a figure has the numbers of its sources. */
const unnumbered = (line: string): string => line.replace(/ \(\d+(?:, \d+)*\)$/, "");
/** Some slides take two in the file. */
const taken = ({ id }: DeckSlide): number => (/^signs|^places|^myths-2/.test(id) ? 2 : 1);

const deckOf = (language: keyof typeof languages, minutes: number) => {
  const kit = lasting(kits[language], { minutes });
  return { kit, deck: classDeck(kit, catalogue(), taken) };
};

/** The slides of each part, by their numbers in the file. */
function byPart({
  slides,
  parts,
}: Deck): { name: string; minutes: number; count: number; own: DeckSlide[] }[] {
  let number = 1;
  const starts = slides.map((slide) => {
    const start = number;
    number += taken(slide);
    return { slide, start };
  });
  expect(parts.at(-1)!.last).toBe(number - 1);
  return parts.map(({ name, from, to, first, last }) => ({
    name,
    minutes: to - from,
    count: last - first + 1,
    own: starts.flatMap(({ slide, start }) => (start >= first && start <= last ? [slide] : [])),
  }));
}

const all = ([20, 45, 90] as const).flatMap((minutes) =>
  (Object.keys(languages) as (keyof typeof languages)[]).map((language) => [minutes, language] as const),
);

describe.each(all)("slides of a class of %i minutes in %s", (minutes, language) => {
  const { kit, deck } = deckOf(language, minutes);
  const { held } = heldParts(minutes, kit.request.topics);

  it("come in the order of the running sheet's parts, without a gap in minutes or numbers", () => {
    expect(deck.parts.map(({ name }) => name)).toEqual(held.map(({ name }) => name));
    let [minute, number] = [0, 1];
    for (const [index, part] of deck.parts.entries()) {
      expect([part.from, part.first]).toEqual([minute, number]);
      expect(part.to - part.from).toBe(held[index]!.minutes);
      expect(part.last).toBeGreaterThanOrEqual(part.first);
      [minute, number] = [part.to, part.last + 1];
    }
    expect(minute).toBe(minutes);
    expect(byPart(deck).flatMap(({ own }) => own)).toEqual(deck.slides);
  });

  it("are as many as the minutes of each part bear, and all cautions whatever the minutes", () => {
    for (const { name, minutes: borne, count, own } of byPart(deck)) {
      if (name !== "safety" && own.length > 1)
        expect(count * minutesOfSlide, name).toBeLessThanOrEqual(borne);
    }
    const cautions = new Set(
      kit.documents
        .filter(({ sort }) => sort === "answer")
        .flatMap(({ blocks }) => blocks.flatMap((block) => (block.block === "caution" ? block.lines : []))),
    );
    const shown = JSON.stringify(byPart(deck).find(({ name }) => name === "safety")!.own);
    for (const line of [...cautions].map(unnumbered))
      expect(shown).toContain(JSON.stringify(line).slice(1, -1));
  });

  it("tell in their notes the minutes of their part, what the host does, and what there is no time for", () => {
    for (const [index, { own }] of byPart(deck).entries()) {
      const { from, to } = deck.parts[index]!;
      for (const { notes } of own) {
        const [when] = notes;
        expect(when!.match(/\d+/g)!.map(Number)).toEqual([from, to, to - from]);
      }
    }
    const places = byPart(deck).find(({ name }) => name === "places")!.own;
    const shown = places.map(({ title }) => title);
    for (const { name } of kit.items)
      expect([...shown, ...places.at(-1)!.notes].join("\n"), name).toContain(name);
  });

  it("are named by number on the running sheet, part by part", () => {
    const { documents } = withSlides(kit, catalogue(), deck);
    expect(documents.map(({ id }) => id)).toEqual(kit.documents.map(({ id }) => id));
    const table = documents.at(-1)!.blocks.find(({ block }) => block === "table");
    const rows = table?.block === "table" ? table.rows : [];
    expect(rows.length).toBe(deck.parts.length);
    for (const [index, { first, last }] of deck.parts.entries()) {
      const numbers = rows[index]!.at(-1)!.match(/\d+/g)!.map(Number);
      expect(numbers).toEqual(first === last ? [first] : [first, last]);
    }
    expect(documentLines(documents.at(-1)!).join("\n")).toMatch(
      /^(A screen, if you show slides|Una pantalla, si)/m,
    );
  });
});

describe("slides of longer classes", () => {
  it.each(Object.keys(languages) as (keyof typeof languages)[])(
    "show no less of any part: %s",
    (language) => {
      const shown = [20, 45, 90].map((minutes) => byPart(deckOf(language, minutes).deck));
      for (const [short, long] of [
        [shown[0]!, shown[1]!],
        [shown[1]!, shown[2]!],
      ] as const)
        for (const { name, own } of short) {
          const longer = long.find((one) => one.name === name)!.own.map(({ id }) => id);
          expect(longer.slice(0, own.length)).toEqual(own.map(({ id }) => id));
        }
      expect(shown[2]!.flatMap(({ own }) => own).length).toBeGreaterThan(
        shown[0]!.flatMap(({ own }) => own).length + 10,
      );
    },
  );

  it("tag titles in another language than the deck, those too that stand on no paper", () => {
    const { deck } = deckOf("Spanish", 90);
    const own = deck.slides.flatMap(({ ownSources = [] }) => ownSources).filter(({ passages }) => passages);
    expect(own.length).toBeGreaterThan(0);
    for (const { text, passages } of own) expect(deck.passages?.get(text)).toEqual(passages);
  });

  it("tell of the gas, of ripening, signs and surpluses what the answer sheets tell", () => {
    const { kit, deck } = deckOf("English", 90);
    const sheets = kit.documents
      .filter(({ sort }) => sort === "answer")
      .flatMap(documentLines)
      .map(unnumbered)
      .join("\n");
    const told = deck.slides.filter(({ id }) => /^(signs|saving)-/.test(id));
    expect(told.length).toBeGreaterThan(6);
    for (const { parts } of told)
      for (const part of parts) {
        const lines =
          part.part === "list" ? part.items : part.part === "pairs" ? part.rows.map(({ text }) => text) : [];
        for (const line of lines.flatMap((text) => text.split("\n"))) expect(sheets).toContain(line);
      }
    for (const { sources, ownSources } of told) {
      expect(sources.length).toBeGreaterThan(0);
      expect(sources).toEqual([...new Set(ownSources?.map(({ text }) => text))]);
    }
    const apart = JSON.stringify(deck.slides.find(({ id }) => id === "apart"));
    expect(apart).toMatch(/Give off ripening gas","text":"Bananas, apples and tomatoes\./);
    expect(apart).toMatch(/Hurt by it","text":"[^"]*omaine/);
    expect(JSON.stringify(deck.slides.find(({ id }) => id === "ripening-answer"))).toMatch(
      /Get ripe at home","text":"Bananas/,
    );
  });
});
