export * from "./carryOut.js";
export * from "./drawnFigure.js";
export * from "./meals.js";
export * from "./spreads.js";
