export * from "./dewPoint.js";
export * from "./humidityRatio.js";
export * from "./relativeHumidity.js";
export * from "./saturationPressure.js";
export * from "./vapourDensity.js";
export * from "./vapourPressureDeficit.js";
