import type { Catalogue } from "@keepwright/catalogue";
import { answerDocument } from "./answerDocument.js";
import { classContext } from "./classContext.js";
import { classItems } from "./classItems.js";
import type { ClassDocument, ClassKit } from "./classKit.js";
import type { ClassRequest } from "./classRequest.js";
import { mythsDocument } from "./myths/mythsDocument.js";
import { placesDocument } from "./placesDocument.js";
import { classKitchen, haulLots, householdPlan, householdRequest, usualLots } from "./workedHousehold.js";

/**
 * Makes a kit: the same for the same request and catalogue, always. Throws ClassError naming what was not understood, and the errors of `bindProblem`.
 * @param catalogue one with provenance, since every document names its sources
 */
export function makeKit(request: ClassRequest, catalogue: Catalogue): ClassKit {
  const kitchen = classKitchen(request);
  const { haul } = request.household;
  const brought = haul === undefined ? undefined : haulLots(catalogue, haul);
  const items = classItems(catalogue, request, brought?.map(({ commodity }) => commodity) ?? []);
  const context = classContext(request, catalogue, kitchen, items);
  const asked = householdRequest(catalogue, request, kitchen, brought ?? usualLots(catalogue, items));
  const plan = householdPlan(asked);
  const documents: ClassDocument[] = [
    ...items.map((id) => answerDocument(context, id)),
    placesDocument(context),
    ...(request.topics.includes("myths") ? [mythsDocument(context)] : []),
  ];
  return {
    request,
    title: request.title ?? context.say("kit.title"),
    language: context.handout.speaker.tag,
    items: items.map((id) => ({ id, name: context.title(id) })),
    kitchen,
    household: { invented: haul === undefined, request: asked, plan },
    documents,
  };
}
