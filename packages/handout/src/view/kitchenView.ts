import type { Kitchen } from "@keepwright/planner";
import { humidityWords, roomWords, temperatureWords } from "../words/amounts.js";
import { plainText } from "../words/plainText.js";
import type { HandoutContext } from "./context.js";
import { kitchenTitle, kitchenWords } from "./ordinaryNames.js";

type Place = Kitchen["places"][number];

export interface KitchenView {
  readonly name: string;
  readonly lines: readonly string[];
}

function placeLine(context: HandoutContext, place: Place): string {
  const { speaker, units } = context;
  const values = {
    name: kitchenWords(context, place.name),
    kind: speaker.say(`place.kind.${place.kind}`),
    temperature: temperatureWords(speaker, units, place.temperature),
    litres: roomWords(speaker, units, place.litres),
  };
  if (!place.vent) return speaker.say("kitchen.place", values);
  return speaker.say("kitchen.placeWithVent", { ...values, vent: speaker.say(`vent.${place.vent}`) });
}

/** A kitchen in words: the room, its refrigerators, its places and the wraps at hand. */
export function kitchenView(context: HandoutContext, kitchen: Kitchen): KitchenView {
  const { speaker, units } = context;
  const temperature = (celsius: number) => temperatureWords(speaker, units, celsius);
  const wraps = kitchen.wraps.map((wrap) => speaker.say(`wrapName.${wrap}`));
  return {
    name: kitchenTitle(context, kitchen.name),
    lines: [
      speaker.say("kitchen.room", {
        temperature: temperature(kitchen.room.temperature),
        humidity: humidityWords(speaker, kitchen.room.relativeHumidity),
      }),
      ...kitchen.refrigerators.map((one) => {
        const values = {
          litres: roomWords(speaker, units, one.litres),
          temperature: temperature(one.temperature),
        };
        return kitchen.refrigerators.length === 1
          ? speaker.say("kitchen.refrigeratorOnly", values)
          : speaker.say("kitchen.refrigerator", { ...values, name: plainText(one.id) });
      }),
      ...kitchen.places.map((place) => placeLine(context, place)),
      wraps.length > 0
        ? speaker.say("kitchen.wraps", { wraps: speaker.list(wraps) })
        : speaker.say("kitchen.noWraps"),
    ],
  };
}
