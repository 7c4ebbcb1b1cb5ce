import { type Commodity, preparations } from "@keepwright/catalogue";
import type { Plan } from "@keepwright/planner";
import { commodityIn, type HandoutContext } from "./context.js";

type Preparation = (typeof preparations)[number];

/** One thing to do before putting away, for all lots it holds for. */
export interface PreparationView {
  readonly task: string;
  readonly lots: readonly string[];
  readonly line: string;
  /** True where the advice is common practice and no publication was found. */
  readonly commonPractice: boolean;
}

const isPreparation = (name: string): name is Preparation =>
  (preparations as readonly string[]).includes(name);

const isCommonPractice = (commodity: Commodity | undefined, task: string): boolean =>
  commodity?.preparation.find((step) => step.do === task)?.kind === "common practice";

/** Things to do first, each with its reason; lots that share one are named together. */
export function preparationViews(
  context: HandoutContext,
  plan: Plan,
  names: ReadonlyMap<string, string>,
): PreparationView[] {
  const groups = new Map<string, { task: Preparation; commonPractice: boolean; lots: string[] }>();
  for (const lot of plan.lots) {
    for (const task of lot.preparation.filter(isPreparation)) {
      const commonPractice = isCommonPractice(commodityIn(context, lot.commodity), task);
      const group = groups.get(`${task} ${commonPractice}`) ?? { task, commonPractice, lots: [] };
      group.lots.push(lot.id);
      groups.set(`${task} ${commonPractice}`, group);
    }
  }
  return [...groups.values()].map(({ task, commonPractice, lots }) => ({
    task,
    lots,
    commonPractice,
    line: preparationLine(
      context,
      task,
      commonPractice,
      lots.map((id) => names.get(id) ?? id),
    ),
  }));
}

function preparationLine(
  { speaker }: HandoutContext,
  task: Preparation,
  practice: boolean,
  names: string[],
): string {
  const values = {
    names: speaker.list(names),
    task: speaker.say(`prepare.do.${task}`),
    why: speaker.say(`prepare.why.${task}`),
  };
  return speaker.say(practice ? "prepare.practice" : "prepare.line", values);
}
