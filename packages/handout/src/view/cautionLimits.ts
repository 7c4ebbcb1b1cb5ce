import type { Catalogue, SafetyLimit } from "@keepwright/catalogue";

/** Which of the catalogue's safety limits a caution tells, by its name. */
const limitsOf: Readonly<Record<string, readonly string[]>> = {
  "no-refrigerator-for-cut-produce": [
    "refrigerate-cut-within",
    "refrigerate-cut-within-when-hot",
    "hot-surroundings-above",
  ],
  "cut-produce": ["refrigerate-cut-within", "refrigerate-cut-within-when-hot", "hot-surroundings-above"],
  "cut-ready-to-eat": ["controlled-cold-holding-at-most", "cut-ready-to-eat-days"],
  "refrigerator-too-warm": ["refrigerator-at-most"],
  "mould-soft": ["mould-on-soft-keep"],
  "mould-firm": ["mould-on-firm-cut-around"],
  "green-potatoes": ["potato-glycoalkaloids"],
  "garlic-in-oil": ["garlic-in-oil-refrigerated-days", "garlic-in-oil-unrefrigerated"],
};

/** The safety limits that a caution stands on, with where each comes from; none where it tells no limit. */
export const cautionLimits = ({ safety }: Pick<Catalogue, "safety">, caution: string): SafetyLimit[] =>
  (limitsOf[caution] ?? []).flatMap((id) => safety.get(id) ?? []);
