/** Idioma, medidas y lo que se guarda en el aparato. */
export const settingsSpanish = {
  "settings.language": "Idioma",
  "settings.language.device": "El de este aparato",
  "settings.language.en": "English",
  "settings.language.es": "Español",
} as const;
