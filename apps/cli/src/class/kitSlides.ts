import type { Catalogue } from "@keepwright/catalogue";
import { type ClassKit, classDeck } from "@keepwright/handout";
import { slidesPptx } from "@keepwright/paper";

/** The file of the slides in a kit. */
export const slidesFile = "slides.pptx";

/** The slides of a kit, as bytes. */
export const slidesOf = async (kit: ClassKit, catalogue: Catalogue): Promise<Uint8Array> =>
  (await slidesPptx(classDeck(kit, catalogue))).bytes;
