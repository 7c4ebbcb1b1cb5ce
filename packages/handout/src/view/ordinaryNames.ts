import { plainText } from "../words/plainText.js";
import { englishLanguage, type MessageKey } from "../words/speaker.js";
import type { HandoutContext } from "./context.js";

type OrdinaryKey = Extract<MessageKey, `ordinary.${string}`>;

const isOrdinary = (key: string): key is OrdinaryKey =>
  key.startsWith("ordinary.") && Object.hasOwn(englishLanguage.messages, key);

/** A kitchen's or a place's name within a sentence: an ordinary kitchen's in the speaker's language; one's own as it was written. */
export function kitchenWords({ speaker }: HandoutContext, name: string): string {
  const key = `ordinary.${name}`;
  return isOrdinary(key) ? speaker.say(key) : plainText(name);
}

/** The same where it stands by itself. */
export const kitchenTitle = (context: HandoutContext, name: string): string =>
  isOrdinary(`ordinary.${name}`) ? context.speaker.capital(kitchenWords(context, name)) : plainText(name);
