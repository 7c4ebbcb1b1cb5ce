/** Languages of the page; "device" follows what the device is set to. */
export const languageKeys = ["en", "es"] as const;
export type LanguageKey = (typeof languageKeys)[number];
export type LanguageChoice = LanguageKey | "device";

/** The first of the device's languages that the page speaks; English where it speaks none of them. */
export function languageFor(choice: LanguageChoice, preferred: readonly string[]): LanguageKey {
  if (choice !== "device") return choice;
  const spoken = preferred.map((tag) => tag.toLowerCase().split("-")[0]);
  return spoken.flatMap((base) => languageKeys.filter((key) => key === base))[0] ?? "en";
}
