/** Below this much a figure of waste is next to nothing [g]: a bite or two, far inside what the model can tell. Declared, no source. */
export const nextToNothing = 25;
