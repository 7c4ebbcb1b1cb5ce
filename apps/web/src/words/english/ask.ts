/** One question, one large answer. */
export const askEnglish = {} as const;
