import type { Catalogue, Commodity } from "@keepwright/catalogue";
import { type UnitSystem, type Units, unitsOf } from "../words/amounts.js";
import { englishLanguage, type Language, type Speaker, speaker } from "../words/speaker.js";

/** Who is spoken to, in which units, and what is known of the kinds spoken of. */
export interface HandoutContext {
  readonly speaker: Speaker;
  readonly units: Units;
  readonly catalogue: Pick<Catalogue, "commodities" | "sources" | "safety">;
}

export interface HandoutOptions {
  /** A system as a whole, or temperatures and masses each in their own; absent: metric. */
  readonly units?: UnitSystem | Units;
  /** Absent: English, with dates in the order readers of the units are used to. */
  readonly language?: Language;
}

export function handoutContext(
  catalogue: HandoutContext["catalogue"],
  { units = "metric", language }: HandoutOptions = {},
): HandoutContext {
  const apart = unitsOf(units);
  const spoken = language ?? (apart.mass === "us" ? { ...englishLanguage, tag: "en-US" } : englishLanguage);
  return { speaker: speaker(spoken), units: apart, catalogue };
}

/** The kind's record, or undefined: a plan saved with a newer catalogue may name kinds this one lacks. */
export const commodityIn = (context: HandoutContext, id: string): Commodity | undefined =>
  context.catalogue.commodities.get(id);
