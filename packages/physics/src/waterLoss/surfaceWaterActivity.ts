/**
 * Water activity of the surface of fresh produce [1]: its vapour pressure as a share of pure water's.
 *
 * Dissolved sugars and acids lower it to 0.98 in most fruits and 0.99 in most vegetables (Chau, Romero, Baird & Gaffney 1987,
 * "vapour pressure lowering effect", as in ASHRAE Handbook Refrigeration ch. 19; from memory). One middle value is used for all kinds:
 * the difference matters only in air above about 95 % relative humidity.
 */
export const surfaceWaterActivity = 0.985;
