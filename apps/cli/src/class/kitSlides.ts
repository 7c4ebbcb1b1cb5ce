import { join } from "node:path";
import type { Catalogue } from "@keepwright/catalogue";
import { type ClassKit, classDeck } from "@keepwright/handout";
import { slidesPptx } from "@keepwright/paper";
import type { Door } from "../door/door.js";

/** The file of the slides in a kit. */
export const slidesFile = "slides.pptx";

/** Makes the slides of a kit and writes them into its folder. */
export async function writeSlides(
  door: Door,
  folder: string,
  kit: ClassKit,
  catalogue: Catalogue,
): Promise<void> {
  const { bytes } = await slidesPptx(classDeck(kit, catalogue));
  door.writeFile(join(folder, slidesFile), bytes);
}
