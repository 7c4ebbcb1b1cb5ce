import type { Catalogue } from "@keepwright/catalogue";
import { type ClassKit, classDeck, withSlides } from "@keepwright/handout";
import { slidesPptx, slidesTaken } from "@keepwright/paper";

/** The file of the slides in a kit. */
export const slidesFile = "slides.pptx";

/** The slides of a kit as bytes, and the kit with their numbers on its running sheet. */
export async function slidesOf(kit: ClassKit, catalogue: Catalogue) {
  const deck = classDeck(kit, catalogue, slidesTaken);
  const { bytes } = await slidesPptx(deck);
  return { bytes, kit: withSlides(kit, catalogue, deck) };
}
