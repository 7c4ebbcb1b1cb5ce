export * from "./ethyleneResponse.js";
export * from "./ripeningRate.js";
export * from "./temperatureFactor.js";
export * from "./unripeLife.js";
