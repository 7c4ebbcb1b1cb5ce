/** Language, units, and what is kept on the device. */
export const settingsEnglish = {
  "settings.language": "Language",
  "settings.language.device": "As this device is set",
  "settings.language.en": "English",
  "settings.language.es": "Español",
} as const;
