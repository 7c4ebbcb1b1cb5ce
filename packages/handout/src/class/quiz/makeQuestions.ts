import type { ClassContext } from "../classContext.js";
import { seededNumbers, seedFor, shuffled } from "../seeded.js";
import { careQuestions } from "./careQuestions.js";
import { gasQuestions } from "./gasQuestions.js";
import { placeQuestions } from "./placeQuestions.js";
import type { Asker, Draft, Question } from "./question.js";
import { safetyQuestions } from "./safetyQuestions.js";

/** Every sort of question there is. */
export const askers: readonly Asker[] = [
  ...safetyQuestions,
  ...placeQuestions,
  ...gasQuestions,
  ...careQuestions,
];

/** Most wrong choices of a question. A declared preference, no source. */
const mostWrong = 3;

/** A question with its wrong choices drawn and mixed by the seed. */
export function questionFrom(draft: Draft, seed: number): Question {
  const { right, wrong, why, inOrder, eitherWay, ...rest } = draft;
  const own = seedFor(seed, `${draft.sort} ${draft.subject}`);
  const different = wrong.filter(({ text }) => text !== right.text);
  const drawn = shuffled(different, own).slice(0, mostWrong);
  const direction = eitherWay && seededNumbers(own + 2)() < 0.5 ? -1 : 1;
  const place = ({ key }: { readonly key: string }): number => direction * (inOrder?.indexOf(key) ?? 0);
  const mixed = shuffled([right, ...drawn], own + 1);
  const choices = inOrder ? mixed.sort((one, other) => place(one) - place(other)) : mixed;
  return { ...rest, choices, answer: choices.indexOf(right), why: why(drawn) };
}

const bears = ({ topics }: Asker, context: ClassContext): boolean =>
  topics === undefined || topics.some((topic) => context.request.topics.includes(topic));

/** Whether enough of its wrong choices are left once those in the same words are out. */
const askable = (draft: Draft, least: number): boolean =>
  new Set(draft.wrong.map(({ text }) => text).filter((text) => text !== draft.right.text)).size >= least;

/**
 * All questions of a kit, in the order in which they are to be taken: one of each sort in turn, kinds that were not asked about yet first. The seed
 * chooses among them; the questions themselves are what the catalogue and the simulation say.
 * @param inCold kinds that the worked household has in the cold: none of them is asked about as hurt by it
 */
export function makeQuestions(context: ClassContext, inCold: ReadonlySet<string> = new Set()): Question[] {
  const { seed } = context.request;
  const next = seededNumbers(seedFor(seed, "order"));
  const piles = askers
    .filter((asker) => bears(asker, context))
    .map((asker) => {
      const drafts = asker
        .drafts(context)
        .filter(
          (draft) => askable(draft, asker.least) && !(draft.sort === "cold" && inCold.has(draft.subject)),
        );
      return {
        always: asker.topics === undefined,
        order: next(),
        drafts: shuffled(drafts, seedFor(seed, asker.sort)),
      };
    })
    .filter(({ drafts }) => drafts.length > 0)
    .sort((one, other) => Number(other.always) - Number(one.always) || one.order - other.order);
  const asked = new Map<string, number>();
  const taken: Draft[] = [];
  for (
    let left = piles.map(({ drafts }) => drafts);
    left.length > 0;
    left = left.filter((pile) => pile.length > 0)
  ) {
    for (const pile of left) {
      const times = ({ subject }: Draft) => asked.get(subject) ?? 0;
      const draft = pile.reduce((best, one) => (times(one) < times(best) ? one : best));
      pile.splice(pile.indexOf(draft), 1);
      asked.set(draft.subject, times(draft) + 1);
      taken.push(draft);
    }
  }
  return taken.map((draft) => questionFrom(draft, seed));
}
