export * from "./airTree.js";
export * from "./ethyleneField.js";
export * from "./vapour.js";
export * from "./vapourField.js";
export * from "./wetness.js";
export * from "./wrapAir.js";
