export { coldestPlace } from "../problem/contradictions.js";
export * from "./describedKitchen.js";
export * from "./kitchenAnswers.js";
export { type AnswerFault, writtenNumber } from "./readAnswer.js";
