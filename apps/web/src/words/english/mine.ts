/** The person’s own arrangement beside the plan, and what would help most. */
export const mineEnglish = {} as const;
