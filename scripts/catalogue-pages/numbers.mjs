/** A computed number with two significant digits, as written text: what lies below them may change with every run of the model. */
export function twoDigits(value) {
  const rounded = Number(value.toPrecision(2));
  return signed(rounded);
}

/** A number as the data give it, with a true minus sign. */
export const signed = (value) => String(value).replace("-", "−");

/** "3" or "3–5". */
export const span = (low, high, write = signed) =>
  write(low) === write(high)
    ? write(low)
    : `${write(low)}${low < 0 || high < 0 ? " to " : "–"}${write(high)}`;

/** Shortest life [d] told apart on these pages; half a day. */
export const shortestDays = 0.5;

/** Days with two significant digits; what is below half a day is only told to be so. */
export const daysText = (days) => (days < shortestDays ? "under 0.5" : twoDigits(days));

/** Whole degrees Fahrenheit of a temperature in °C. */
export const fahrenheit = (celsius) => Math.round((celsius * 9) / 5 + 32);

/** "0 °C (32 °F)" or "5–10 °C (41–50 °F)"; `to` is the word between negative numbers. */
export const temperatureSpan = ({ low, high }, to = "to") => {
  const join = (one, other) =>
    one === other ? signed(one) : `${signed(one)}${low < 0 ? ` ${to} ` : "–"}${signed(other)}`;
  return `${join(low, high)} °C (${join(fahrenheit(low), fahrenheit(high))} °F)`;
};
