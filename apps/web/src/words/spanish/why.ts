/** Por qué algo está donde está, y qué le pone fin. */
export const whySpanish = {} as const;
