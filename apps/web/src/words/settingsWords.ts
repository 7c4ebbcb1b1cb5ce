import { type Message, sayer } from "@keepwright/handout";
import { useMemo } from "react";
import { useDesk } from "../behaviour/desk.js";
import { settingsEnglish } from "./english/settings.js";
import { settingsSpanish } from "./spanish/settings.js";

/** The words of the settings, which come with that screen and not with the page: a message for every key of the English ones. */
export type SettingsWords = { readonly [key in keyof typeof settingsEnglish]: Message };

const languages = { en: settingsEnglish, es: settingsSpanish } as const;

const settingsSayer = (tag: string, messages: SettingsWords) => sayer<typeof settingsEnglish>(tag, messages);
export type SaySettings = ReturnType<typeof settingsSayer>;

/** The words of the settings in the language the page is shown in. */
export function useSettingsWords(): SaySettings {
  const { language, tag } = useDesk();
  return useMemo(() => settingsSayer(tag, languages[language]), [language, tag]);
}
