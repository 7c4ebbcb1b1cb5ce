import type { KindGuidance } from "@keepwright/catalogue";
import { ownUnitFirst } from "./ownUnitFirst.js";
import { ownSpelling } from "./spelling.js";

/** A message, or a line about a kind, as the readers of a BCP 47 tag are used to it: their spelling, and their unit first. */
export const forReaders = (tag: string, text: string): string => ownUnitFirst(tag, ownSpelling(tag, text));

/** What is told of a kind, for the readers of a tag. */
export function guidanceForReaders<Guided extends Pick<KindGuidance, "words">>(
  tag: string,
  guidance: Guided,
): Guided {
  const own = (line: string) => forReaders(tag, line);
  const { ripe, going, discard, prepare, trimmings, save, hazards } = guidance.words;
  const words: KindGuidance["words"] = {
    ripe: ripe.map(own),
    going: going.map(own),
    discard: discard.map(own),
    prepare: prepare.map((step) => ({ do: own(step.do), why: own(step.why) })),
    trimmings: trimmings.map(own),
    save: save.map(own),
    hazards: hazards.map(own),
  };
  return { ...guidance, words };
}
