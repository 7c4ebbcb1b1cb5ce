import type { Catalogue } from "@keepwright/catalogue";
import { buyable, type Lot, type Plan } from "@keepwright/planner";
import { plainText } from "../words/plainText.js";
import { answerDocument } from "./answerDocument.js";
import { type ClassContext, classContext } from "./classContext.js";
import { classItems } from "./classItems.js";
import type { ClassDocument, ClassKit } from "./classKit.js";
import { type ClassReader, classReader } from "./classReader.js";
import type { ClassRequest } from "./classRequest.js";
import { comparisonDocument } from "./comparison/comparisonDocument.js";
import { layKit } from "./comparison/layKit.js";
import { exerciseDocuments } from "./exercise/exerciseDocuments.js";
import { householdDocument } from "./householdDocument.js";
import { coldIn, mythsDocument } from "./myths/mythsDocument.js";
import { placesDocument } from "./placesDocument.js";
import { cardsDocument } from "./quiz/cardsDocument.js";
import { makeQuestions } from "./quiz/makeQuestions.js";
import { quizDocuments } from "./quiz/quizDocuments.js";
import { runningSheet } from "./running/runningSheet.js";
import { sourcesDocument } from "./sourcesDocument.js";
import { classKitchen, haulLots, householdPlan, householdRequest, inventedLots } from "./workedHousehold.js";

/** Questions on the sheet, and more of them on cards. Declared preferences, no source. */
const questionsAsked = 10;
const questionsOnCards = 10;
/** Most kinds on the exercise's list: more is too long to add up in class. A declared preference, no source. */
const mostListed = 8;
/** What the list and the invented haul come to, as shares of what is eaten [1]: a list with something to cut, and a haul that is not too much. Declared preferences, no source. */
const listShare = 1.6;
const haulShare = 0.8;

function exercise(context: ClassContext, reader: ClassReader): ClassDocument[] {
  const { request, catalogue, kitchen, items } = context;
  if (!request.topics.includes("buying")) return [];
  const { list } = request.household;
  const wished: readonly Lot[] =
    list === undefined
      ? inventedLots(catalogue, items.slice(0, mostListed), request, listShare)
      : haulLots(reader, list, "class household list");
  const { haul: _, ...rest } = householdRequest(catalogue, request, kitchen, wished);
  return exerciseDocuments(context, wished, buyable({ ...rest, wished: { lots: wished } }));
}

function questionDocuments(context: ClassContext, plan: Plan): ClassDocument[] {
  const questions = makeQuestions(context, coldIn(plan));
  const onCards = questions.slice(questionsAsked, questionsAsked + questionsOnCards);
  return [cardsDocument(context, onCards), ...quizDocuments(context, questions.slice(0, questionsAsked))];
}

/**
 * Makes a kit: the same for the same request and catalogue, always. Throws ClassError naming what was not understood, and the errors of `bindProblem`.
 * @param catalogue one with provenance, since every document names its sources
 */
export function makeKit(request: ClassRequest, catalogue: Catalogue): ClassKit {
  const kitchen = classKitchen(request);
  const reader = classReader(request.audience, catalogue);
  const { haul } = request.household;
  const brought = haul === undefined ? undefined : haulLots(reader, haul, "class household haul");
  const ofHaul = brought?.map(({ commodity }) => commodity) ?? [];
  const { items, taken } = classItems(reader, request, ofHaul);
  const context = classContext(request, catalogue, kitchen, items);
  const lots = brought ?? inventedLots(catalogue, items, request, haulShare);
  const asked = householdRequest(catalogue, request, kitchen, lots);
  const plan = householdPlan(asked);
  const twoWays = layKit(context, asked, plan);
  const counted = new Map(lots.map((lot) => [lot.id, lot]));
  const invented = haul === undefined;
  const documents: ClassDocument[] = [
    ...items.map((id) => answerDocument(context, id)),
    placesDocument(context),
    householdDocument(context, { plan, counted, invented }),
    comparisonDocument(context, twoWays),
    ...(request.topics.includes("myths") ? [mythsDocument(context, plan)] : []),
    ...questionDocuments(context, plan),
    ...exercise(context, reader),
  ];
  const papers = [...documents, sourcesDocument(context, documents)];
  return {
    request,
    title: request.title ?? context.say("kit.title"),
    language: context.handout.speaker.tag,
    items: items.map((id) => ({ id, name: context.title(id) })),
    taken: taken.map(({ word, id }) =>
      context.say("made.taken", { word: plainText(word), name: context.name(id) }),
    ),
    kitchen,
    household: { invented, request: asked, plan, twoWays },
    documents: [...papers, runningSheet(context, papers)],
  };
}
