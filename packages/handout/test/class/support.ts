import { catalogue } from "@keepwright/catalogue";
import { type ClassContext, type ClassRequest, classContext, classTopics } from "@keepwright/handout";
import { ordinaryKitchens } from "@keepwright/planner";

/** A request with everything filled in, and changes to it. */
export const classRequest = (changes: Partial<ClassRequest> = {}): ClassRequest => ({
  version: 1,
  audience: { language: "en", print: "ordinary", paper: "a4", units: "metric" },
  household: { kitchen: "ordinary", people: 4, portions: 5, days: 7 },
  minutes: 60,
  topics: [...classTopics],
  seed: 1,
  ...changes,
});

export const spanish = { language: "es", print: "large", paper: "letter", units: "us" } as const;

export const everyKind = [...catalogue().commodities.keys()];

/** What documents are made from, for any kinds and kitchen. */
export const contextOf = (
  items: readonly string[],
  changes: Partial<ClassRequest> = {},
  kitchen = ordinaryKitchens.ordinary,
): ClassContext => classContext(classRequest(changes), catalogue(), kitchen, items);
