import { catalogue } from "@keepwright/catalogue";
import { describe, expect, it } from "vitest";
import { readHaul } from "../../src/reading/index.js";
import { englishLines } from "./englishLines.js";
import { spanishLines } from "./spanishLines.js";

type Item = ReturnType<typeof readHaul>["items"][number];

const asked = ({ questions: [first] }: Item): string =>
  `? ${first?.ask === "which commodity" ? first.candidates.slice(0, 3).join("/") : first?.ask}`;

function told(item: Item): string {
  if (item.kind === "question") return asked(item);
  const { commodity, grams, ripeness, form, tops, washed, extraDays } = item.lot;
  const words = [
    commodity,
    `${Math.round(grams)} g`,
    ripeness,
    form === "cut" && "cut",
    tops && "with tops",
    washed && "washed",
    extraDays > 0 && `${extraDays} d`,
    item.questions.length > 0 && "?",
  ];
  return words.filter(Boolean).join(" ");
}

const read = (line: string) => readHaul(line, catalogue()).items.map(told).join("; ");

describe("lines of shopping lists", () => {
  it.each(spanishLines)("%s", (line, expected) => expect(read(line)).toBe(expected));
  it.each(englishLines)("%s", (line, expected) => expect(read(line)).toBe(expected));
});
