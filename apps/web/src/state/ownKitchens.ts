import {
  describedKitchen,
  type Kitchen,
  type KitchenAnswers,
  type KitchenQuestion,
} from "@keepwright/planner";
import type { OwnKitchen } from "./plannerState.js";

/** The first key of an own kitchen that none of these has. */
export function freshKey(kitchens: readonly OwnKitchen[]): string {
  const taken = new Set(kitchens.map(({ key }) => key));
  let number = 1;
  while (taken.has(`own-${number}`)) number++;
  return `own-${number}`;
}

/** A kitchen of which nothing has been said yet: the ordinary one under its own name. */
export const freshKitchen = (kitchens: readonly OwnKitchen[], name: string): OwnKitchen => ({
  key: freshKey(kitchens),
  kitchen: describedKitchen({}, name).kitchen,
  answers: {},
});

/** What each question fills in. */
const fieldsOf: Readonly<Record<KitchenQuestion, readonly (keyof KitchenAnswers)[]>> = {
  refrigerator: ["refrigerator", "litres"],
  drawers: ["drawers"],
  door: ["door"],
  cold: ["cold", "coldReading"],
  room: ["room", "roomReading"],
  air: ["air", "airReading"],
  cupboard: ["cupboard"],
  cellar: ["cellar", "cellarReading", "balcony", "balconyReading"],
  wraps: ["wraps"],
};

/** Without the answers to these questions, and without what is not given. */
function without(answers: KitchenAnswers, questions: readonly KitchenQuestion[]): KitchenAnswers {
  const left = questions.flatMap((question) => fieldsOf[question]);
  return Object.fromEntries(
    Object.entries(answers).filter(
      ([field, value]) => value !== undefined && !left.includes(field as keyof KitchenAnswers),
    ),
  );
}

/** The kitchen of the answers that will do; those that will not count as not given. */
function soundKitchen(answers: KitchenAnswers, name: string): Kitchen {
  const { kitchen, faults } = describedKitchen(answers, name);
  if (faults.length === 0) return kitchen;
  return soundKitchen(
    without(
      answers,
      faults.map(({ question }) => question),
    ),
    name,
  );
}

/** The kitchen after more was said of it. Answers are kept whatever they are; it is made of those that will do. */
export function withAnswers(own: OwnKitchen, changes: KitchenAnswers): OwnKitchen {
  const answers = without({ ...own.answers, ...changes }, []);
  return { ...own, answers, kitchen: soundKitchen(answers, own.kitchen.name) };
}

/** The same kitchen under another name. */
export const renamed = (own: OwnKitchen, name: string): OwnKitchen => ({
  ...own,
  kitchen: { ...own.kitchen, name },
});

const longestName = 120;
/** Whether a kitchen can be called by this name: something that can be seen, and not endless. */
export const isName = (name: string): boolean =>
  name.replace(/[\p{C}\p{Z}]/gu, "") !== "" && name.length <= longestName;
