/**
 * Water leaving produce [kg/(kg s)], per kilogram on arrival.
 *
 * Never negative: where the air holds more vapour than the surface gives, water settles on the produce (the climate of the place
 * counts it) but is not taken up. Any conductance ≥ 0 and pressures ≥ 0.
 * Source: Sastry, Baird & Buffington 1978, as in ASHRAE Handbook Refrigeration ch. 19: ṁ = k_t m (a_w p_sat − p).
 *
 * @param conductance transpiration coefficient [kg/(kg s Pa)]
 * @param surfaceVapourPressure a_w p_sat at the produce's temperature [Pa]
 * @param vapourPressure of the air around it [Pa]
 * @param uptake share of the loss replaced through a stem standing in water, 0…1
 */
export function transpirationRate(
  conductance: number,
  surfaceVapourPressure: number,
  vapourPressure: number,
  uptake = 0,
): number {
  const deficit = surfaceVapourPressure - vapourPressure;
  return deficit > 0 ? conductance * deficit * (1 - uptake) : 0;
}
