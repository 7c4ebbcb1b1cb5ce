import type { Messages } from "../message.js";

/** How far a plan can be from the best there is. */
export const proofWords = {
  "heading.proof": "How much better it could be",
  "proof.bound":
    "Waste, quality, life and effort taken together, this plan costs {value}. By the model no plan for this haul in this kitchen costs less than {bound}, so a better one could save at most {share}.",
  "proof.best":
    "Waste, quality, life and effort taken together, this plan costs {value}. By the model no other plan for this haul in this kitchen is better by more than a crumb.",
  "proof.note":
    "That limit takes the best for each thing at once, so the true best is most often nearer to this plan. It speaks of the model, not of how right the model is.",
  "proof.wishes": "What is wanted for a day counts as nothing in that limit.",
} as const satisfies Messages;
