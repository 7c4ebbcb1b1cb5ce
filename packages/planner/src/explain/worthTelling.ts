/** What is too little to be told. Declared, no source: decision 0107. */
export const worthTelling = {
  /** Share of a life that must be lost or won. */
  life: 0.02,
  /** Part of the objective [g]: a bite is more. */
  grams: 1,
} as const;
