import { type Commodity, preparations } from "@keepwright/catalogue";
import type { Plan } from "@keepwright/planner";
import { commodityIn, type HandoutContext } from "./context.js";
import { namesTogether } from "./names.js";
import { isPast } from "./safeTime.js";

type Preparation = (typeof preparations)[number];
type Why = Preparation | "light";

/** One thing to do before putting away, for all lots it holds for. */
export interface PreparationView {
  readonly task: Preparation;
  readonly lots: readonly string[];
  readonly line: string;
  /** The line in two parts, for a page that sets the reason below: what to do, and why with how well it is founded. */
  readonly what: string;
  readonly why: string;
  /** True for work to be done before putting away; false for what is to be left as it is, or kept so. */
  readonly now: boolean;
  /** True where the advice is common practice and no publication was found. */
  readonly commonPractice: boolean;
}

/** A task with its reason and how well it is founded, for one kind. */
interface Task {
  readonly task: Preparation;
  readonly why: Why;
  readonly commonPractice: boolean;
}

/** What asks for nothing but patience: it is not on the list of things to do now. */
const keptAsItIs: readonly Preparation[] = [
  "keep dry and unwashed",
  "keep husk on",
  "keep in the dark",
  "keep on the vine",
  "wash just before use",
  "leave whole",
];

/** Whether a task is one to keep to while it lies there, and nothing to be done at once. */
export const isKeptAsItIs = (task: Preparation): boolean => keptAsItIs.includes(task);

const isPreparation = (name: string): name is Preparation =>
  (preparations as readonly string[]).includes(name);

/**
 * The tasks of a kind that are told: one word about washing is enough, and what is to be kept dry is not washed now anyway.
 */
export const toldTasks = (names: readonly string[]): Preparation[] =>
  names
    .filter(isPreparation)
    .filter((name) => name !== "wash just before use" || !names.includes("keep dry and unwashed"));

function taskFor(commodity: Commodity | undefined, task: Preparation): Task {
  const evidence = commodity?.preparation.find((step) => step.do === task);
  const why = task === "keep in the dark" && !commodity?.greensInLight ? "light" : task;
  return { task, why, commonPractice: evidence?.kind === "common practice" };
}

function taskLine({ speaker }: HandoutContext, task: Task, names: readonly string[]): string {
  const values = {
    names: speaker.capital(speaker.list(names)),
    task: speaker.say(`prepare.do.${task.task}`),
    why: speaker.say(`prepare.why.${task.why}`),
  };
  return speaker.say(task.commonPractice ? "prepare.practice" : "prepare.line", values);
}

function whatAndWhy({ speaker }: HandoutContext, task: Task, names: readonly string[]) {
  const why = speaker.say(`prepare.why.${task.why}`);
  return {
    what: speaker.say("prepare.what", {
      names: speaker.capital(speaker.list(names)),
      task: speaker.say(`prepare.do.${task.task}`),
    }),
    why: task.commonPractice ? speaker.say("prepare.whyPractice", { why }) : why,
  };
}

/** Things to do first, each with its reason; lots that share one are named together. */
export function preparationViews(
  context: HandoutContext,
  plan: Plan,
  names: ReadonlyMap<string, string>,
): PreparationView[] {
  const groups = new Map<string, { task: Task; lots: string[] }>();
  const kept = plan.lots.filter((one) => !isPast(one));
  for (const lot of kept) {
    for (const name of toldTasks(lot.preparation)) {
      const task = taskFor(commodityIn(context, lot.commodity), name);
      const key = Object.values(task).join("|");
      const group = groups.get(key) ?? { task, lots: [] };
      group.lots.push(lot.id);
      groups.set(key, group);
    }
  }
  return [...groups.values()].map(({ task, lots }) => {
    const named = namesTogether(context, { ...plan, lots: kept }, names, lots);
    return {
      task: task.task,
      lots,
      ...whatAndWhy(context, task, named),
      now: !isKeptAsItIs(task.task),
      commonPractice: task.commonPractice,
      line: taskLine(context, task, named),
    };
  });
}

/** The advice for one kind in a line; none where the task is not one of the catalogue's. */
export function preparationLine(context: HandoutContext, id: string, task: string, name: string): string[] {
  if (!isPreparation(task)) return [];
  return [taskLine(context, taskFor(commodityIn(context, id), task), [name])];
}

/** Whether no publication was found for the advice about a kind. */
export const isCommonPractice = (context: HandoutContext, id: string, task: Preparation): boolean =>
  taskFor(commodityIn(context, id), task).commonPractice;
