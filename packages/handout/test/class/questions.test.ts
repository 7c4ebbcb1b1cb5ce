import { readFileSync } from "node:fs";
import { bundledGuidance, catalogue, commodityOf } from "@keepwright/catalogue";
import type { ClassContext } from "@keepwright/handout";
import { keptAlone, ordinaryKitchens, trimsMould } from "@keepwright/planner";
import { describe, expect, it } from "vitest";
import { askers, makeQuestions, questionFrom } from "../../src/class/quiz/makeQuestions.js";
import type { Question, QuestionSort } from "../../src/class/quiz/question.js";
import { shuffled } from "../../src/class/seeded.js";
import { contextOf, everyKind, spanish } from "./support.js";

const limits = new Map(
  (
    JSON.parse(readFileSync(new URL("../../../catalogue/data/safety.json", import.meta.url), "utf8")) as {
      id: string;
      value: number;
    }[]
  ).map(({ id, value }) => [id, value]),
);
const guidance = bundledGuidance("en");
const kind = (id: string) => commodityOf(catalogue(), id);
const fruit = ["fruit", "berry", "citrus"];

const usual = "apple banana carrot spinach tomato potato onion strawberry avocado lemon".split(" ");

type Verdict = "right" | "wrong" | "doubtful";
const verdict = (right: boolean, wrong: boolean): Verdict => (right ? "right" : wrong ? "wrong" : "doubtful");

const strongest = (id: string): number =>
  Math.max(...kind(id).ethylene.production.flatMap((one) => (one.temperature > 25 ? [] : [one.high])));
const rank = (id: string): number =>
  ["very low", "low", "moderate", "high", "very high"].indexOf(kind(id).ethylene.sensitivity.class);

/** Each choice judged afresh from the catalogue: right, wrong beyond doubt, or neither. */
const fromCatalogue: Partial<Record<QuestionSort, (subject: string, key: string) => Verdict>> = {
  "gas giver": (_, key) => verdict(strongest(key) >= 10, strongest(key) < 1),
  "gas harmed": (_, key) => verdict(rank(key) >= 3, rank(key) <= 1),
  ripens: (subject, key) => {
    const { climacteric, ripening, organ } = kind(subject);
    const does = climacteric && ripening !== undefined && ripening.arrives.value < 1;
    const doesNot = !climacteric && ripening === undefined && fruit.includes(organ);
    if (does === doesNot) return "doubtful";
    return (key === "yes") === does ? "right" : "wrong";
  },
  mould: (subject, key) =>
    key === (kind(subject).decay.flesh === "soft" ? "throw" : "cut around")
      ? "right"
      : verdict(false, ["cut off", "wash off", "wipe off"].includes(key)),
  discard: (subject, key) => {
    const [list, at] = key.split(" ");
    const { words } = guidance.get(subject)!;
    const there = { discard: words.discard, going: words.going, ripe: words.ripe }[list as "going"];
    return there[Number(at)] === undefined ? "doubtful" : verdict(list === "discard", list !== "discard");
  },
  wash: (subject, key) => {
    const steps = kind(subject).preparation.map((step) => step.do);
    const later = steps.includes("keep dry and unwashed") || steps.includes("wash just before use");
    return later ? verdict(key === "before eating", key !== "before eating") : "doubtful";
  },
  cold: (_, key) => {
    const threshold = kind(key).chilling?.threshold;
    return verdict((threshold?.low ?? threshold?.value ?? -9) >= 7, threshold === undefined);
  },
  "cut hours": (_, key) =>
    verdict(
      Number(key) === limits.get("refrigerate-cut-within"),
      Number(key) > limits.get("refrigerate-cut-within")!,
    ),
  "cut days": (subject, key) =>
    kind(subject).cut.timeTemperatureControl.value
      ? verdict(
          Number(key) === limits.get("cut-ready-to-eat-days"),
          Number(key) > limits.get("cut-ready-to-eat-days")!,
        )
      : "doubtful",
};

/** Problems of a question, none where exactly one choice is right, it is the answer, and all others are wrong beyond doubt. */
function problemsOf(question: Question, judge: (subject: string, key: string) => Verdict): string[] {
  const { sort, subject, choices, answer } = question;
  const named = `${sort} of ${subject}: ${choices.map(({ key }) => key).join(", ")}`;
  const verdicts = choices.map(({ key }) => judge(subject, key));
  return [
    ...(verdicts[answer] === "right" ? [] : [`${named}: the answer is ${verdicts[answer]}`]),
    ...(verdicts.some((one, index) => index !== answer && one !== "wrong")
      ? [`${named}: a wrong choice is ${verdicts.filter((_, index) => index !== answer).join(", ")}`]
      : []),
    ...(new Set(choices.map(({ text }) => text)).size === choices.length ? [] : [`${named}: two read alike`]),
    ...(choices.length >= 2 ? [] : [`${named}: nothing to choose`]),
    ...(question.evidence.every(({ source }) => catalogue().sources.has(source)) &&
    question.evidence.length > 0
      ? []
      : [`${named}: no source`]),
  ];
}

const simulated: readonly QuestionSort[] = ["place", "longest"];

describe("questions from the catalogue", () => {
  const seeds = Array.from({ length: 40 }, (_, seed) => seed * 7919);

  it.each(
    askers.filter(({ sort }) => !simulated.includes(sort)).map((asker) => [asker.sort, asker] as const),
  )("%s: answers are recomputed over every kind and many seeds, in both languages", (sort, asker) => {
    for (const changes of [{}, { audience: spanish }]) {
      const drafts = asker.drafts(contextOf(everyKind, changes));
      expect(drafts.length).toBeGreaterThan(0);
      const problems = drafts.flatMap((draft) =>
        seeds.flatMap((seed) => problemsOf(questionFrom(draft, seed), fromCatalogue[sort]!)),
      );
      expect([...new Set(problems)]).toEqual([]);
    }
  });

  it("would be found out: a right choice among the wrong ones, or a wrong answer", () => {
    const [draft] = askers.find(({ sort }) => sort === "gas giver")!.drafts(contextOf(everyKind));
    const judge = fromCatalogue["gas giver"]!;
    const spoilt = { ...draft!, wrong: [{ key: "banana", text: "Bananas" }] };
    expect(problemsOf(questionFrom(spoilt, 1), judge).join()).toMatch(/a wrong choice is right/);
    const question = questionFrom(draft!, 1);
    const moved = { ...question, answer: (question.answer + 1) % question.choices.length };
    expect(problemsOf(moved, judge).join()).toMatch(/the answer is wrong/);
  });
});

describe("the order of choices", () => {
  const numbers = ["cut hours", "cut days"];
  const draftsOf = (sorts: readonly string[]) =>
    askers
      .filter(({ sort }) => sorts.includes(sort))
      .flatMap((asker) => asker.drafts(contextOf(["tomato", "cantaloupe"])));

  it("of numbers runs either way by the seed, the same for the same seed: the least is not always first", () => {
    for (const draft of draftsOf(numbers)) {
      const answers = Array.from({ length: 60 }, (_, seed) => {
        const question = questionFrom(draft, seed);
        expect(questionFrom(draft, seed)).toEqual(question);
        const amounts = question.choices.map(({ key }) => Number(key));
        const rising = [...amounts].sort((one, other) => one - other);
        expect([rising, [...rising].reverse()]).toContainEqual(amounts);
        return question.answer === 0 ? "first" : question.answer === amounts.length - 1 ? "last" : "between";
      });
      const first = answers.filter((where) => where === "first").length;
      expect(first).toBeGreaterThan(15);
      expect(first).toBeLessThan(45);
      expect(answers).not.toContain("between");
    }
  });

  it("of yes and no stays, whichever is right", () => {
    for (const draft of askers.find(({ sort }) => sort === "ripens")!.drafts(contextOf(usual)))
      for (let seed = 0; seed < 10; seed++)
        expect(questionFrom(draft, seed).choices.map(({ key }) => key)).toEqual(["yes", "no"]);
  });
});

describe("mould", () => {
  const told = (id: string, lists: readonly ("going" | "discard" | "hazards")[]) =>
    lists.flatMap((list) => guidance.get(id)!.words[list] ?? []).filter((line) => /mould/i.test(line));
  const asked = new Map(
    askers
      .find(({ sort }) => sort === "mould")!
      .drafts(contextOf(everyKind))
      .map(({ subject, right }) => [subject, right.key]),
  );

  it("is cut away only from what its own advice says so of; what it says to throw out is not asked about", () => {
    expect(asked.get("carrot")).toBe("cut around");
    for (const [id, answer] of asked) {
      const lines = told(id, ["going", "discard"]);
      const cuts = lines.some((line) => /cut.*inch/i.test(line));
      expect(answer, id).toBe(kind(id).decay.flesh === "soft" ? "throw" : "cut around");
      expect(cuts, `${id}: ${lines.join(" ")}`).toBe(answer === "cut around");
    }
    for (const id of ["sweet-potato", "parsnip", "apple", "potato"]) expect(asked.has(id), id).toBe(false);
  });

  it("is said to be cut away from those kinds whose own advice says so, and from no other", () => {
    const says = (id: string) =>
      kind(id).decay.flesh === "firm" &&
      told(id, ["going", "discard", "hazards"]).some((line) => /cut.*inch/i.test(line));
    for (const id of everyKind) expect(trimsMould(id), id).toBe(says(id));
    const context = contextOf(["carrot", "apple", "onion", "parsnip"]);
    const answered = (id: string) => context.answer(id).cautions.includes("mould-firm");
    expect(["carrot", "apple", "onion", "parsnip"].map(answered)).toEqual([true, false, false, false]);
    const forbidden = everyKind.filter((id) =>
      told(id, ["discard", "hazards"]).some((line) => /do not (trim|cut)|throw out the whole/i.test(line)),
    );
    expect(forbidden).toContain("parsnip");
    expect(forbidden.filter(trimsMould)).toEqual([]);
  });
});

/** A kind alone in a kitchen, worked out again by the planner itself. */
const alone = (id: string, kitchen: ClassContext["kitchen"]) => {
  const { household, ripening } = kind(id);
  const grams = household.units.find(({ name }) => name === household.bareUnit)!.grams;
  const lot = { id: "x", commodity: id, grams, ripeness: ripening?.arrives.value ?? 1, form: "whole" };
  return keptAlone({ haul: { lots: [lot] }, kitchen, from: "2000-01-01", catalogue: catalogue() });
};

describe("questions from the simulation", () => {
  const kitchen = ordinaryKitchens.ordinary;
  const context = contextOf(usual);
  const again = new Map(usual.map((id) => [id, alone(id, kitchen)]));
  const life = (id: string) => again.get(id)!.best.life;
  const judges: Partial<typeof fromCatalogue> = {
    place: (subject, key) => {
      const { best, inEachKind } = again.get(subject)!;
      if (best.stays[0]!.placeKind === key) return "right";
      const there = inEachKind.find(({ stays }) => stays[0]!.placeKind === key);
      const neverRipe = there?.readyOnDay === null && best.readyOnDay !== null;
      // Of what moves on when ripe, a life that counts the later place cannot be set beside one in a single place.
      const half = best.stays.length === 1 && (there?.life.middle ?? 99) <= best.life.middle / 2;
      return verdict(false, neverRipe || half);
    },
  };

  it("place: the answer is where the planner keeps it, the others give half the life or less, or no ripening", () => {
    const asker = askers.find(({ sort }) => sort === "place")!;
    const drafts = asker.drafts(context).filter(({ wrong }) => wrong.length >= asker.least);
    expect(drafts.length).toBeGreaterThan(usual.length / 2);
    for (const draft of drafts)
      for (let seed = 0; seed < 40; seed++)
        expect(problemsOf(questionFrom(draft, seed), judges.place!)).toEqual([]);
  });

  it("longest: even a short life of the answer is longer than a long life of the others", () => {
    const asker = askers.find(({ sort }) => sort === "longest")!;
    const drafts = asker.drafts(context).filter(({ wrong }) => wrong.length >= asker.least);
    expect(drafts.length).toBeGreaterThan(2);
    for (const draft of drafts)
      for (let seed = 0; seed < 40; seed++)
        expect(
          problemsOf(questionFrom(draft, seed), (subject, key) =>
            verdict(key === subject, life(key).late < life(subject).early),
          ),
        ).toEqual([]);
  });

  it("are chosen by the seed among few kinds, no question twice, the safety question always", () => {
    const orders = new Set<string>();
    for (let seed = 0; seed < 60; seed++) {
      const items = shuffled(usual, seed).slice(0, 1 + (seed % 8));
      const own = { ...context, items, request: { ...context.request, seed } };
      const questions = makeQuestions(own);
      expect(questions[0]?.sort).toBe("cut hours");
      const names = questions.map(({ sort, subject }) => `${sort} ${subject}`);
      expect(new Set(names).size).toBe(names.length);
      for (const { subject, choices, sort } of questions) {
        expect(items).toContain(subject);
        if (["gas giver", "gas harmed", "cold", "longest"].includes(sort))
          for (const { key } of choices) expect(items).toContain(key);
      }
      orders.add(names.slice(0, 6).join());
      expect(makeQuestions(own)).toEqual(questions);
    }
    expect(orders.size).toBeGreaterThan(50);
  });

  it("keep to the topics", () => {
    const request = { ...context.request, topics: ["apart"] as const };
    const sorts = new Set(makeQuestions({ ...context, request }).map(({ sort }) => sort));
    expect([...sorts].sort()).toEqual(["cut hours", "gas giver", "gas harmed"]);
  });
});

describe("harm from cold", () => {
  const asker = askers.find(({ sort }) => sort === "cold")!;
  // Lemons keep best in the door of a small refrigerator, and are hurt by cold all the same.
  const context = contextOf(["lemon", "tomato", "kale", "carrot", "mushroom"], {}, ordinaryKitchens.small);

  it("is not asked of what the answer sheet or the worked household puts in the cold", () => {
    const places = context.answer("lemon").belongs.stays.map(({ placeKind }) => placeKind);
    expect(places.join()).toMatch(/refrigerator/);
    expect(asker.drafts(context).map(({ subject }) => subject)).toEqual(["tomato"]);
    const subjects = (inCold: readonly string[]) =>
      makeQuestions(context, new Set(inCold)).flatMap(({ sort, subject }) =>
        sort === "cold" ? [subject] : [],
      );
    expect(subjects([])).toEqual(["tomato"]);
    expect(subjects(["tomato"])).toEqual([]);
  });
});
