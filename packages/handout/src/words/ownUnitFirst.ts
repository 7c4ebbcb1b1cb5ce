/** Readers of these tags are used to Fahrenheit and inches. */
const readsFahrenheit = (tag: string): boolean => tag.endsWith("-US");

/** A temperature told in both units, "5 °C (41 °F)" or "32 °C or 90 °F". */
const degrees = /(\d+(?:\.\d+)?) °C( \(| or | o )(\d+) °F/gu;
/** A length told in both: "2.5 cm (1 inch)". */
const lengths = /(\d+(?:\.\d+)?|\{centimetres\}) cm \((\d+ (?:inch|pulgada))\)/gu;

/** Messages tell a figure in °C and cm first; to readers who are used to the others it is told in theirs first. The figures stay as they are: none is rounded anew. */
export const ownUnitFirst = (tag: string, message: string): string =>
  readsFahrenheit(tag) ? message.replace(degrees, "$3 °F$2$1 °C").replace(lengths, "$2 ($1 cm)") : message;
