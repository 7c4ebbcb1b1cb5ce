import { catalogue } from "@keepwright/catalogue";
import {
  englishLanguage,
  handoutContext,
  lotNames,
  planView,
  sheetView,
  spanishLanguage,
} from "@keepwright/handout";
import { carryOn, type Lot, ordinaryKitchens, type Plan, planHaul, readHaul } from "@keepwright/planner";
import { addDays, type CalendarDate } from "@keepwright/quantities";
import { describe, expect, it } from "vitest";
import { inventedCatalogue } from "../fixtures/catalogue.js";
import { handMadePlan } from "../fixtures/plan.js";

const known = catalogue();
const english = handoutContext(known, { language: englishLanguage });
const spanish = handoutContext(known, { language: spanishLanguage });
const from = "2026-06-13" as CalendarDate;
const kitchen = ordinaryKitchens.ordinary;

const haulOf = (text: string) => ({
  lots: readHaul(text, known, from).items.flatMap((item, index): Lot[] =>
    item.kind === "lot" ? [{ ...item.lot, id: `lot-${index + 1}` }] : [],
  ),
});
const household = { people: 2, portionsPerPersonPerDay: 4, daysAway: [], days: 6 };
const plannedFor = (text: string): Plan =>
  planHaul({ haul: haulOf(text), kitchen, household, from, seed: 1, catalogue: known });
const laterPlan = (text: string, happened: object = {}): Plan => {
  const plan = plannedFor(text);
  const on = addDays(from, 2);
  const asked = { plan, haul: haulOf(text), kitchen, catalogue: known, on };
  return carryOn({ ...asked, happened: { version: 1, ...happened } }).plan;
};

/** Names of a plan in the order of its lots, in both languages. */
const named = (plan: Plan) => ({
  en: [...lotNames(english, plan).values()].sort(),
  es: [...lotNames(spanish, plan).values()].sort(),
});

describe("names of like things", () => {
  it("are the person's own words where those differ, in any language", () => {
    expect(named(plannedFor("300 g poblanos\n200 g Serrano"))).toEqual({
      en: ["poblanos", "Serrano"].sort(),
      es: ["poblanos", "Serrano"].sort(),
    });
  });
  it("are those of the kind where the word says no more than the kind", () => {
    expect(named(plannedFor("300 g chiles\n200 g serranos"))).toEqual({
      en: ["chillies", "serranos"],
      es: ["chiles", "serranos"],
    });
    expect(named(plannedFor("300 g poblanos")).en).toEqual(["chillies"]);
  });
  it("say how they came where the words do not set them apart", () => {
    expect(named(plannedFor("500 g ripe tomatoes\n500 g unripe tomatoes"))).toEqual({
      en: ["tomatoes (came ripe)", "tomatoes (came unripe)"],
      es: ["tomates (a punto al llegar)", "tomates (sin madurar al llegar)"],
    });
  });
  it("number lots that nothing sets apart as lots, never as parts of one", () => {
    expect(named(plannedFor("200 g kale\n300 g kale"))).toEqual({
      en: ["kale (lot 1 of 2)", "kale (lot 2 of 2)"],
      es: ["kale (lote 1 de 2)", "kale (lote 2 de 2)"],
    });
  });
});

describe("names of like things when a plan is carried on", () => {
  it("say how ripe each was on the first day of the new plan, not that it came so", () => {
    const plan = laterPlan("1 kg nearly ripe tomatoes\n1 kg unripe tomatoes");
    expect(plan.lots.length).toBeGreaterThan(1);
    const { en, es } = named(plan);
    for (const name of en) expect(name).toMatch(/^tomatoes \(.*(ripe on Mon 15 June|lot \d of \d)/);
    for (const name of es) expect(name).toMatch(/^tomates \((.* el lun 15 de junio|lote \d de \d)/);
    expect([...en, ...es].join()).not.toMatch(/came|al llegar/);
  });
  it("give the day each is of, where one came home later", () => {
    const cameHome = haulOf("300 g carrots").lots.map(({ id: _, ...lot }) => lot);
    expect(named(laterPlan("1.5 kg carrots", { cameHome }))).toEqual({
      en: ["carrots (of Mon 15 June)", "carrots (of Sat 13 June)"],
      es: ["zanahorias (del lun 15 de junio)", "zanahorias (del sáb 13 de junio)"],
    });
  });
});

describe("parts of one lot", () => {
  const invented = handoutContext(inventedCatalogue, { language: spanishLanguage });
  const whole = (tasks: readonly string[][]): Plan => {
    const parts = handMadePlan.lots.filter(({ commodity }) => commodity === handMadePlan.lots[1]!.commodity);
    return { ...handMadePlan, lots: parts.map((lot, part) => ({ ...lot, preparation: tasks[part]! })) };
  };
  const task = ["trim stem ends"];

  it("stand in parentheses, and their count apart from them", () => {
    const { eating } = planView(handoutContext(inventedCatalogue), handMadePlan);
    expect(eating.days.flatMap(({ short }) => short)).toContain("dawnfruits (part 1 of 2): 2");
    expect([...lotNames(invented, handMadePlan).values()].join()).toMatch(/\(parte 1 de 2\)/);
  });
  it("are named once where all of them share a task, and alone where they do not", () => {
    const context = handoutContext(inventedCatalogue);
    const tasksOf = (plan: Plan) => [
      planView(context, plan).preparation[0]!.what.split(":")[0],
      sheetView(context, plan).tasks[0]!.names,
      planView(invented, plan).preparation[0]!.what.split(":")[0],
    ];
    const [page, paper, es] = tasksOf(whole([task, task]));
    expect([page, paper]).toEqual(["Dawnfruits", "Dawnfruits."]);
    expect(es).not.toMatch(/parte/);
    const [one, onPaper, uno] = tasksOf(whole([task, []]));
    expect(one).toMatch(/^Dawnfruits? \(part \d of 2\)$/);
    expect(onPaper).toBe(`${one}.`);
    expect(uno).toMatch(/\(parte \d de 2\)/);
  });
  it("are told of lots that nothing sets apart only where those are of one origin", () => {
    const parts = whole([[], []]).lots;
    const apart = (origins: readonly string[]) => ({
      ...handMadePlan,
      lots: parts.map((lot, at) => ({
        ...lot,
        lot: lot.id,
        apart: { since: "2026-06-13", origin: origins[at]! },
      })),
    });
    const names = (origins: readonly string[]) => [...lotNames(invented, apart(origins)).values()].join();
    expect(names(["a", "a"])).toMatch(/parte 1 de 2.*parte 2 de 2/);
    expect(names(["a", "b"])).toMatch(/lote 1 de 2.*lote 2 de 2/);
  });
});
