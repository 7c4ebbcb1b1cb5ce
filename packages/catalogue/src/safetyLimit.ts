import { celsiusFromFahrenheit } from "@keepwright/quantities";
import type { SafetyLimit } from "./tables.js";

/**
 * A limit of temperature [°C] exactly as it was published: where that was in °F, not rounded on the way. 40 °F is told
 * as 4.4 °C but is 4.444; a refrigerator set to just 40 °F keeps within it.
 */
export const exactLimit = ({ value, fahrenheit }: Pick<SafetyLimit, "value" | "fahrenheit">): number =>
  fahrenheit === undefined ? value : celsiusFromFahrenheit(fahrenheit);
