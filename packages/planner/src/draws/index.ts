export * from "./besideDraws.js";
export * from "./carryOut.js";
export * from "./drawnFigure.js";
export * from "./meals.js";
export * from "./planDraws.js";
export * from "./spreads.js";
