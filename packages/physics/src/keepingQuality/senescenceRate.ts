/**
 * Senescence a day [1/d] in air at the reference ethylene level: the life published at the reference temperature, used up faster or
 * slower as the produce breathes faster or slower.
 *
 * Any rates > 0 and life > 0. Ethylene divides it further (see `ethylene/actionFactor`).
 * Source: rates proportional to respiration: ASHRAE Handbook Refrigeration and Handbook 66 (perishability goes with respiration); sum of
 * rates: Tijskens & Polderdijk 1996.
 *
 * @param respiration at the temperature in question [mg CO2/(kg h)]
 * @param referenceRespiration at the temperature of the published life [mg CO2/(kg h)]
 * @param life published at that temperature [d]
 */
export const senescenceRate = (respiration: number, referenceRespiration: number, life: number): number =>
  respiration / referenceRespiration / life;
