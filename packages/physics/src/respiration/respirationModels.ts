import type { Produce } from "../produce/produce.js";
import { beckerFrickeCoefficients, beckerFrickeRespiration } from "./beckerFricke.js";
import { respirationRate } from "./respirationRate.js";

/**
 * Rival models of respiration, under their authors' names. The plan uses "Handbook 66", which knows more kinds and gives each its own course; the other
 * is for comparison, and they differ up to twofold (carrot, Brussels sprouts, onion: see docs/model/respiration.md).
 */
export const respirationModels = ["Handbook 66", "Becker & Fricke"] as const;
export type RespirationModel = (typeof respirationModels)[number];

/** Respiration [mg CO2/(kg h)] at a temperature [°C] by the model named. Throws RangeError where Becker & Fricke give no coefficients for the kind. */
export function respirationBy(model: RespirationModel, produce: Produce, celsius: number): number {
  if (model === "Handbook 66") return respirationRate(produce.respiration, celsius);
  const coefficients = beckerFrickeCoefficients[produce.id];
  if (!coefficients) {
    throw new RangeError(
      `Becker & Fricke give no coefficients for "${produce.id}". Use the model "Handbook 66".`,
    );
  }
  return beckerFrickeRespiration(coefficients, celsius);
}
