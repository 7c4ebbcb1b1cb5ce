/** Una pregunta, una respuesta grande. */
export const askSpanish = {} as const;
