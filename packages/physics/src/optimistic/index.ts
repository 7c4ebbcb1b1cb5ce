export * from "./airRanges.js";
export * from "./optimist.js";
export { furthestDay, type OptimisticCourse } from "./optimisticCourse.js";
export { nearlyRipe, type RipeningTime, stepperError } from "./ripeningTime.js";
