import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { mergedText, movedPlace } from "../../../src/state/history/merged.js";

describe("a text changed here and elsewhere at once", () => {
  it.each([
    ["a\nb", "a\nb\nc", "x\na\nb", "x\na\nb\nc"],
    ["a\nb", "1 a\nb", "a\nb\nc", "1 a\nb\nc"],
    ["a\nb\nc", "a\nc", "a\nb\nc d", "a\nc d"],
    ["a", "a\nmine", "a\nother", "a\nother\nmine"],
    ["", "mine", "other", "other\nmine"],
    ["a\n", "a\n5", "a\n1\n", "a\n1\n5"],
    ["a\n1", "a\n12", "a\n1\nother", "a\n12\nother"],
    ["a", "b", "b", "b"],
    // The same letter put in at the same place by both is taken for one: a text that comes back from the database is no second change.
    ["a", "a ", "a ", "a "],
  ])("from %j, %j and %j give %j", (from, own, elsewhere, both) => {
    expect(mergedText(from, own, elsewhere)).toBe(both);
  });
  it.each([
    ["3 figs", "5 limes", "4 dates"],
    ["2 kg apples", "2 kg pears", "2 kg plums"],
  ])("gives nothing where both changed the same stretch: %j", (from, own, elsewhere) => {
    expect(mergedText(from, own, elsewhere)).toBeUndefined();
  });
});

interface Typed {
  readonly from: string;
  readonly text: string;
  readonly tab: number;
}
const after = (text: string, { from, text: own }: Typed) => mergedText(from, own, text) ?? own;

/** A tab as the keeper has it: what the database has taken, and its own letters on top until they are taken. */
class Tab {
  caret: number;
  underWay: Typed[] = [];
  constructor(
    readonly number: number,
    public view: string,
  ) {
    this.caret = view.length;
  }
  type(letter: string): void {
    const text = this.view.slice(0, this.caret) + letter + this.view.slice(this.caret);
    this.underWay.push({ from: this.view, text, tab: this.number });
    this.caret += letter.length;
    this.view = text;
  }
  see(held: string): void {
    const view = this.underWay.reduce(after, held);
    this.caret = movedPlace(this.caret, this.view, view);
    this.view = view;
  }
}

describe("two tabs in which lines are typed at the same time", () => {
  it("end with the same text and every letter of both, however the letters and the database fall", () => {
    const acts = fc.array(fc.constantFrom("letter 0", "letter 1", "take 0", "take 1", "see 0", "see 1"), {
      minLength: 10,
      maxLength: 80,
    });
    fc.assert(
      fc.property(acts, (order) => {
        let held = "2 kg potatoes\n3 avocados";
        const tabs = [new Tab(0, held), new Tab(1, held)] as const;
        // No letter is in both lines, since the same one at the same place and moment counts once.
        const left = [[..."\n5-figs"], [..."\n1 melon"]] as const;
        const act = (each: string) => {
          const [what, which] = each.split(" ");
          const tab = tabs[Number(which) as 0 | 1];
          const letter = what === "letter" ? left[Number(which) as 0 | 1].shift() : undefined;
          if (letter !== undefined) tab.type(letter);
          if (what === "take") {
            held = tab.underWay.reduce(after, held);
            tab.underWay = [];
          }
          if (what !== "letter") tab.see(held);
        };
        for (const each of order) act(each);
        for (const which of [0, 1])
          while (left[which as 0 | 1].length > 0)
            for (const what of ["letter", "take"]) act(`${what} ${which}`);
        for (const each of ["take 0", "take 1", "see 0"]) act(each);
        expect(tabs[0].view).toBe(tabs[1].view);
        const letters = (text: string) => [...text.replaceAll("\n", "")].sort().join("");
        expect(letters(tabs[0].view)).toBe(letters("2 kg potatoes3 avocados5-figs1 melon"));
      }),
      { numRuns: 2000 },
    );
  });
});
