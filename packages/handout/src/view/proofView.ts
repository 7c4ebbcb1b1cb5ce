import type { Plan } from "@keepwright/planner";
import { massWords, percentWords } from "../words/amounts.js";
import type { HandoutContext } from "./context.js";

/** A gap below which no better plan is worth a word, as a share: the proof itself stops there. */
const hardlyAny = 0.001;

/** How far a plan can be from the best there is, in lines; undefined where no proof was asked for. */
export function proofLines({ speaker, units }: HandoutContext, plan: Plan): readonly string[] | undefined {
  const { proof } = plan;
  if (!proof) return undefined;
  const value = massWords(speaker, units, proof.value);
  const found =
    proof.gap <= hardlyAny
      ? speaker.say("proof.best", { value })
      : speaker.say("proof.bound", {
          value,
          // Limits hold as told: "not less than" is rounded down, "at most" up.
          bound: massWords(speaker, units, proof.bound, Math.floor),
          share: percentWords(speaker, 100 * proof.gap, Math.ceil),
        });
  const wishes = plan.lots.some(({ wish }) => wish !== undefined) ? [speaker.say("proof.wishes")] : [];
  return [found, ...wishes, speaker.say("proof.note")];
}
