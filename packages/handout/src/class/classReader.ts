import { type Catalogue, catalogueFor } from "@keepwright/catalogue";
import { type HandoutContext, handoutContext } from "../view/context.js";
import { languageFor } from "../words/bundledLanguages.js";
import { type ClassSay, classSayer } from "../words/class/classSayer.js";
import type { ClassAudience } from "./classRequest.js";

/** Who a class is for, as what they wrote is read and what is wrong with it is told. */
export interface ClassReader {
  readonly handout: HandoutContext;
  readonly say: ClassSay;
  /** Whose words for several kinds mean what they mostly mean in the audience's region. */
  readonly catalogue: Catalogue;
}

/** The reader of a class for an audience. */
export function classReader({ language, units, region }: ClassAudience, catalogue: Catalogue): ClassReader {
  const spoken = languageFor(language, units, region);
  const here = catalogueFor(catalogue, spoken.tag);
  return {
    handout: handoutContext(here, { units, language: spoken }),
    say: classSayer(language, spoken.tag),
    catalogue: here,
  };
}
