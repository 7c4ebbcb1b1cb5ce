import { catalogue } from "@keepwright/catalogue";
import { handoutContext, sayer } from "@keepwright/handout";
import {
  describedKitchen,
  type KitchenAnswers,
  kitchenQuestions,
  kitchenWarnings,
} from "@keepwright/planner";
import { describe, expect, it } from "vitest";
import {
  messageHoles,
  messageParts,
  pluralForms,
  typedHoles,
} from "../../../../packages/handout/test/support/messageParts.js";
import { answerWords } from "../../src/components/kitchen/AnswerList.js";
import { faultLine } from "../../src/components/kitchen/Faults.js";
import { warningLines } from "../../src/components/kitchen/KitchenWarnings.js";
import { kitchenQuestionsEnglish } from "../../src/words/english/kitchenQuestions.js";
import { kitchenQuestionsSpanish } from "../../src/words/spanish/kitchenQuestions.js";

const context = handoutContext(catalogue());
const say = sayer<typeof kitchenQuestionsEnglish>("en", kitchenQuestionsEnglish);
const spanish = sayer<typeof kitchenQuestionsEnglish>("es", kitchenQuestionsSpanish);
const reading = (typed: string) => ({ typed, unit: "°C" }) as const;

describe("the words about the kitchen", () => {
  it("are the same in both languages: keys and placeholders", () => {
    expect(Object.keys(kitchenQuestionsSpanish)).toEqual(Object.keys(kitchenQuestionsEnglish));
    for (const [key, message] of Object.entries(kitchenQuestionsEnglish))
      expect(messageHoles(kitchenQuestionsSpanish[key as keyof typeof kitchenQuestionsSpanish]), key).toEqual(
        messageHoles(message),
      );
  });

  it.each([
    ["en", kitchenQuestionsEnglish],
    ["es", kitchenQuestionsSpanish],
  ])("are well formed in %s", (tag, messages) => {
    for (const [key, message] of Object.entries(messages)) {
      const { others, plurals } = messageParts(message);
      expect(others, key).toEqual([]);
      for (const forms of plurals.values())
        expect(
          pluralForms(tag).filter((form) => ![...forms].includes(form)),
          key,
        ).toEqual([]);
      expect(typedHoles(message), key).toEqual(messageHoles(message));
    }
  });
});

describe("an answer in words", () => {
  it("is there for every question, answered or not", () => {
    const answers: KitchenAnswers = {
      refrigerator: "litres",
      litres: "180",
      drawers: [],
      cellar: true,
      wraps: [],
    };
    expect(kitchenQuestions.map((question) => answerWords(say, question, answers))).toEqual([
      "180 litres",
      "No drawer",
      "not known",
      "not known",
      "not known",
      "not known",
      "not known",
      "A cellar",
      "Nothing at hand",
    ]);
    for (const question of kitchenQuestions) expect(answerWords(spanish, question, {})).toBe("no se sabe");
  });
  it("is a reading as it was typed", () => {
    expect(answerWords(say, "cold", { cold: "reading", coldReading: reading("4,5") })).toBe("read as 4,5 °C");
  });
});

describe("what will not do", () => {
  const told = (answers: KitchenAnswers, words = say) =>
    describedKitchen(answers, "x").faults.map((fault) => faultLine(words, fault, context));
  it("names the value and a remedy, in the language", () => {
    expect(told({ cold: "reading", coldReading: reading("60") })).toEqual([
      "“60” cannot be right: write a number from -5 to 45 °C. Read it again, and check the unit beside it.",
    ]);
    expect(told({ cold: "reading", coldReading: reading("25") })[0]).toContain("25 °C in a kitchen of 20 °C");
    expect(told({ cold: "reading", coldReading: reading("frío") }, spanish)[0]).toContain(
      "“frío” no es un número",
    );
  });
});

describe("warnings", () => {
  it("are as many as the planner's check of kitchens gives, and lead with what is unsafe", () => {
    const cases: KitchenAnswers[] = [
      {},
      { cold: "turns" },
      { refrigerator: "none" },
      { cold: "reading", coldReading: reading("-0.5"), balcony: true, balconyReading: reading("-0.8") },
      { cold: "turns", balcony: true, balconyReading: reading("-0.2") },
    ];
    for (const answers of cases) {
      const { kitchen, faults } = describedKitchen(answers, "x");
      expect(faults).toEqual([]);
      expect(warningLines(say, kitchen, context).length).toBe(kitchenWarnings(kitchen).length);
    }
    const { kitchen } = describedKitchen({ cold: "turns" }, "x");
    expect(warningLines(say, kitchen, context)[0]).toMatch(/7\.4 °C\. Set it to 4\.4 °C or less/);
  });
});
