/**
 * Transpiration coefficient [kg/(kg s Pa)] of pieces without skin: only the still air around them resists.
 *
 * Inferred: cubes of 25 mm have 0.24 m²/kg of surface; still air carries heat at about 2.5 W/(m² K), which by the Lewis relation
 * (h / (ρ c_p), R_w T) is 1.56e-8 kg/(m² s Pa); their product. Halves and quarters have less surface, shreds more.
 */
export const cutSurfaceTranspiration = 3.7e-9;

/** Transpiration coefficient [kg/(kg s Pa)] once cut: never less than that of the whole thing. */
export const transpirationWhenCut = (whole: number): number => Math.max(whole, cutSurfaceTranspiration);
