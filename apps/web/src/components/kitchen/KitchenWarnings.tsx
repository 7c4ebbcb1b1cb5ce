import { type HandoutContext, kitchenWords, limitWords, temperatureWords } from "@keepwright/handout";
import { isTooWarm, type Kitchen, warmestSafeRefrigerator } from "@keepwright/planner";
import { Cautions } from "../Cautions.js";
import { type KitchenSay, useKitchenWords } from "./kitchenWords.js";

interface KitchenWarningsProps {
  readonly kitchen: Kitchen;
  readonly context: HandoutContext;
}

/** What can be planned with but deserves a second look; a refrigerator too warm to be safe comes first. */
export function KitchenWarnings({ kitchen, context }: KitchenWarningsProps) {
  const say = useKitchenWords();
  return <Cautions heading={say("warn.heading")} lines={warningLines(say, kitchen, context)} pressing />;
}

/** The same that the planner's check of kitchens warns of (a test compares them), in the page's language and units. */
export function warningLines(say: KitchenSay, kitchen: Kitchen, context: HandoutContext): readonly string[] {
  const { speaker, units } = context;
  const degrees = (celsius: number) => temperatureWords(speaker, units, celsius, 1);
  const limit = context.catalogue.safety.get("refrigerator-at-most") ?? { value: warmestSafeRefrigerator };
  const warm = kitchen.refrigerators
    .filter((one) => isTooWarm(one, context.catalogue))
    .map(({ temperature }) =>
      say("warn.warm", { value: degrees(temperature), most: limitWords(speaker, units, limit) }),
    );
  const freezing = kitchen.places
    .filter(({ temperature }) => temperature < 0)
    .map(({ name, temperature }) =>
      say("warn.freezing", { name: kitchenWords(context, name), value: degrees(temperature) }),
    );
  const none = kitchen.places.some(({ refrigerator }) => refrigerator !== undefined)
    ? []
    : [say("warn.none")];
  return [...warm, ...freezing, ...none];
}
