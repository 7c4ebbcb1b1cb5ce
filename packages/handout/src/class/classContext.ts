import { bundledGuidance, type Catalogue, type KindGuidance } from "@keepwright/catalogue";
import type { Kitchen } from "@keepwright/planner";
import { type AskedAnswer, askedAnswer, askedPlaces } from "../answer/askedAnswer.js";
import type { AnsweredPlace } from "../answer/itemAnswer.js";
import type { HandoutContext } from "../view/context.js";
import { kindName } from "../view/kindNames.js";
import type { ClassSay } from "../words/class/classSayer.js";
import { guidanceForReaders } from "../words/forReaders.js";
import type { LanguageName } from "../words/languages.js";
import { classReader } from "./classReader.js";
import type { ClassRequest } from "./classRequest.js";

/** Everything the documents of one kit are made from. */
export interface ClassContext {
  readonly handout: HandoutContext;
  readonly say: ClassSay;
  readonly request: ClassRequest;
  readonly catalogue: Catalogue;
  readonly guidance: ReadonlyMap<string, KindGuidance>;
  readonly kitchen: Kitchen;
  /** Ids of the kinds, in their order. */
  readonly items: readonly string[];
  /** Whole, as it usually comes home, alone in the kitchen. Worked out once for each kind. */
  answer(id: string): AskedAnswer;
  /** The best it can have in each sort of place of the kitchen. */
  elsewhere(id: string): readonly AnsweredPlace[];
  /** "carrots", as within a sentence. */
  name(id: string): string;
  /** "Carrots". */
  title(id: string): string;
}

function guidanceOf(tag: string, language: LanguageName): ClassContext["guidance"] {
  return new Map([...bundledGuidance(language)].map(([id, told]) => [id, guidanceForReaders(tag, told)]));
}

/** The context of a kit about some kinds in a kitchen. */
export function classContext(
  request: ClassRequest,
  catalogue: Catalogue,
  kitchen: Kitchen,
  items: readonly string[],
): ClassContext {
  const { handout, say } = classReader(request.audience, catalogue);
  const places = new Map<string, ReturnType<typeof askedPlaces>>();
  const whole = { form: "whole" } as const;
  const placesOf = (id: string) => {
    const known = places.get(id) ?? askedPlaces(catalogue, id, kitchen, whole);
    places.set(id, known);
    return known;
  };
  const name = (id: string) => kindName(handout, id);
  return {
    handout,
    say,
    request,
    catalogue,
    guidance: guidanceOf(handout.speaker.tag, request.audience.language),
    kitchen,
    items,
    answer: (id) => askedAnswer(catalogue, id, kitchen, whole, placesOf(id)),
    elsewhere: (id) => placesOf(id).places,
    name,
    title: (id) => handout.speaker.capital(name(id)),
  };
}
