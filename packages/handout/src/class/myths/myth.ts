import type { Evidence } from "@keepwright/catalogue";
import type { ClassContext } from "../classContext.js";
import type { ClassTopic } from "../classRequest.js";

/** A saying, what is true about it, and why it is believed. */
export interface ToldMyth {
  readonly said: string;
  readonly true: string;
  readonly why: string;
}

/** Common advice that the evidence does not bear out. */
export interface Myth {
  readonly id: string;
  /** Told where the class is about one of these. */
  readonly topics: readonly ClassTopic[];
  /** It speaks against the cold, and is not told of a kind that the worked household's plan has in the cold. */
  readonly againstCold?: true;
  /** Kinds of the kit it bears on; where there are none it is not told. */
  about(context: ClassContext): readonly string[];
  tell(context: ClassContext, about: readonly string[]): ToldMyth;
  /** What it stands on: figures of the catalogue, or publications that the catalogue names. */
  evidence(context: ClassContext, about: readonly string[]): readonly Evidence[];
}
