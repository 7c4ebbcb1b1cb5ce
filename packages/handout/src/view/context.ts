import type { Catalogue, Commodity } from "@keepwright/catalogue";
import type { UnitSystem } from "../words/amounts.js";
import { englishLanguage, type Language, type Speaker, speaker } from "../words/speaker.js";

/** Who is spoken to, in which units, and what is known of the kinds spoken of. */
export interface HandoutContext {
  readonly speaker: Speaker;
  readonly units: UnitSystem;
  readonly catalogue: Pick<Catalogue, "commodities" | "sources" | "safety">;
}

export interface HandoutOptions {
  readonly units?: UnitSystem;
  /** Absent: English, with dates in the order the units' readers are used to. */
  readonly language?: Language;
}

export function handoutContext(
  catalogue: HandoutContext["catalogue"],
  { units = "metric", language }: HandoutOptions = {},
): HandoutContext {
  const spoken = language ?? (units === "us" ? { ...englishLanguage, tag: "en-US" } : englishLanguage);
  return { speaker: speaker(spoken), units, catalogue };
}

/** The kind's record, or undefined: a plan saved with a newer catalogue may name kinds this one lacks. */
export const commodityIn = (context: HandoutContext, id: string): Commodity | undefined =>
  context.catalogue.commodities.get(id);
