export * from "./classDeck.js";
export * from "./deck.js";
export * from "./withSlides.js";
