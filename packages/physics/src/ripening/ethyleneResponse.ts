import type { Class } from "@keepwright/catalogue";

/**
 * Share of the time to ripen (in the reference 0.06 µL/L) saved for each tenfold ethylene, by class of response.
 *
 * Order: banana and kiwifruit before custard apple and mango before tomato, avocado and peach (Wills et al. 2001, abstract), which are "very high", "high" and
 * "moderate" here. Steepness inferred: 100 µL/L, held to 10, ripens bananas at 16–18 °C in 4–5 days against about 12–14 untreated (factor 0.33) and mature-green
 * tomatoes at 20 °C in about 6 against 10 (0.55) (Handbook 66, from memory): slopes of 0.30 and 0.20. The other classes follow in steps of 0.05.
 */
export const ripeningSlopes: Record<Class, number> = {
  "very low": 0.1,
  low: 0.15,
  moderate: 0.2,
  high: 0.25,
  "very high": 0.3,
};
