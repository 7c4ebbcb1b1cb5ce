/** Why a lot lies where it lies, and what ends it. */
export const whyEnglish = {} as const;
