export * from "./classDeck.js";
export * from "./deck.js";
