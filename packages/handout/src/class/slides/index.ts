export * from "./deck.js";
