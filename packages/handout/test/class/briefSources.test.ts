import { type ClassDocument, documentLines } from "@keepwright/handout";
import { describe, expect, it } from "vitest";
import { answerDocument } from "../../src/class/answerDocument.js";
import { mythsDocument } from "../../src/class/myths/mythsDocument.js";
import { sourcesDocument } from "../../src/class/sourcesDocument.js";
import { contextOf, spanish } from "./support.js";

const items =
  "apple banana tomato kale potato garlic cantaloupe spinach avocado mango cassava lettuce-butterhead mushroom"
    .split(" ")
    .filter((id) => contextOf([]).catalogue.commodities.has(id));
const contexts = [contextOf(items), contextOf(items, { audience: spanish })] as const;

const numbersAt = (line: string): number[] =>
  (line.match(/ \((\d+(?:, \d+)*)\)$/)?.[1] ?? "").split(", ").filter(Boolean).map(Number);

/** Lines of a sheet itself, with what stands in boxes and lists, a star at a heading taken on by what stands below it. */
function told({ blocks }: ClassDocument): { readonly line: string; readonly starred: boolean }[] {
  let starred = false;
  return blocks.flatMap((block) => {
    if (block.block === "heading") starred = block.text.endsWith("*");
    const lines =
      block.block === "list"
        ? block.items
        : block.block === "caution"
          ? block.lines
          : block.block === "pairs"
            ? block.rows.map(({ text }) => text)
            : [];
    return lines.map((line) => ({ line, starred }));
  });
}

describe.each(contexts.map((context) => [context.handout.speaker.tag, context] as const))(
  "the few sources of a sheet, %s",
  (_, context) => {
    it.each(items)("%s: every figure has its number, and every number its source", (id) => {
      const sheet = answerDocument(context, id);
      const brief = sheet.brief!;
      for (const { line, starred } of told(sheet)) {
        const numbers = numbersAt(line);
        const figures = /\d/.test(line.replace(/ \(\d+(, \d+)*\)$/, ""));
        if (figures && !starred) expect(numbers.length, line).toBeGreaterThan(0);
        for (const number of numbers)
          expect(brief[number - 1]?.text).toMatch(new RegExp(`^\\(${number}\\) `));
      }
      const used = new Set(told(sheet).flatMap(({ line }) => numbersAt(line)));
      expect([...used].sort((one, other) => one - other)).toEqual(
        brief.slice(0, -1).map((_line, at) => at + 1),
      );
      expect(brief.length).toBeLessThanOrEqual(8);
    });

    it("name how well each is known, as the whole list does", () => {
      const recalled = /recalled, not checked in print|de memoria, sin revisar en papel/;
      for (const id of items) {
        const { brief = [], sources } = answerDocument(context, id);
        const life = context.catalogue.commodities.get(id)!.storage.life;
        const ordinary = life.kind === "measured" || life.kind === "recommended";
        expect(recalled.test(brief[0]!.text), id).toBe(ordinary && life.fromMemory);
        expect(sources.length).toBeGreaterThan(brief.length - 1);
      }
    });

    it("leave nothing out: the host's paper has every source in full", () => {
      const papers = [...items.map((id) => answerDocument(context, id)), mythsDocument(context)];
      const whole = documentLines(sourcesDocument(context, papers));
      const wanted = papers.flatMap(({ blocks, sources }) => [
        ...sources,
        ...blocks.flatMap((block) => (block.block === "sources" ? block.sources : [])),
      ]);
      expect(wanted.length).toBeGreaterThan(100);
      for (const { text } of wanted) expect(whole).toContain(text);
    });

    it("tell the language of titles where it is not the page's", () => {
      for (const id of items) {
        const { brief = [], sources } = answerDocument(context, id);
        const marked = [...brief, ...sources].filter(({ passages = [] }) => passages.length > 0);
        if (context.handout.speaker.tag.startsWith("en")) expect(marked).toEqual([]);
        else expect(marked.length, id).toBeGreaterThan(3);
      }
    });
  },
);
