import type { z } from "zod";
import { guidanceSchema } from "./guidance.js";
import { commoditySchema } from "./schema.js";

const { storage, respiration, ethylene, water, decay, household, cut } = commoditySchema.shape;

/**
 * A kind as its file gives it: the physiology that nobody has published may be left out. What is left out is inferred
 * from the nearest relatives (`withInferred`), with wider ranges and an evidence that says so.
 */
export const commodityFileSchema = commoditySchema.extend({
  storage: storage.partial({ relativeHumidity: true, freezingPoint: true }),
  respiration: respiration.optional(),
  ethylene: ethylene.partial({ production: true, sensitivity: true }),
  water: water.partial({ transpiration: true, maximumLoss: true }),
  decay: decay.partial({ proneness: true }),
  household: household.partial({ bulkDensity: true }),
  cut: cut.partial({ life: true }),
  /** What is told to people beside the figures; kept apart from them, see `loadGuidance`. */
  guidance: guidanceSchema.optional(),
});
export type CommodityFile = z.infer<typeof commodityFileSchema>;
