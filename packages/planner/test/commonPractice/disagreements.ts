/** Advice that the plan does not follow, and why. A test fails when one of them starts to agree, or another stops. */
export const disagreements: Readonly<Record<string, string>> = {};
