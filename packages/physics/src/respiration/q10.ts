/**
 * Q10 [1]: how many times faster for each 10 K, from two rates (> 0) at two different temperatures [°C]. Source: definition (van 't Hoff).
 */
export function q10(rate: number, celsius: number, otherRate: number, otherCelsius: number): number {
  if (celsius === otherCelsius) {
    throw new RangeError(
      `A Q10 needs two temperatures, and both are ${celsius} °C. Give rates at different ones.`,
    );
  }
  return (otherRate / rate) ** (10 / (otherCelsius - celsius));
}

/** Rate at another temperature [°C], from one rate and its Q10 [1]. Holds within the band the Q10 was taken from. */
export const rateByQ10 = (rate: number, celsius: number, q: number, otherCelsius: number): number =>
  rate * q ** ((otherCelsius - celsius) / 10);
