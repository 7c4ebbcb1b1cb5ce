import type { Catalogue } from "@keepwright/catalogue";
import { classContext } from "../classContext.js";
import type { ClassKit } from "../classKit.js";
import { runningSheet } from "../running/runningSheet.js";
import type { Deck } from "./deck.js";

/** The kit with the numbers of its slides on the running sheet, part by part. */
export function withSlides(kit: ClassKit, catalogue: Catalogue, { parts }: Pick<Deck, "parts">): ClassKit {
  const ids = kit.items.map(({ id }) => id);
  const context = classContext(kit.request, catalogue, kit.kitchen, ids);
  const others = kit.documents.filter(({ sort }) => sort !== "running sheet");
  return { ...kit, documents: [...others, runningSheet(context, others, parts)] };
}
