/** El orden propio junto al plan, y lo que más ayudaría. */
export const mineSpanish = {} as const;
