export * from "./saturationPressure.js";
