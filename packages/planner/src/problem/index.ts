export * from "./bindCarried.js";
export * from "./bindHaul.js";
export * from "./bindKitchen.js";
export * from "./carried.js";
export * from "./checkHaul.js";
export * from "./checkHousehold.js";
export * from "./checkKitchen.js";
export { type Contradiction, type ContradictionKind, contradictionKinds } from "./contradiction.js";
export { contradictions } from "./contradictions.js";
export { fileFindingCodes } from "./fileFindingCodes.js";
export {
  type FindingCode,
  type FindingValues,
  findingCodes,
  type NamedId,
  type ToldFinding,
  told,
} from "./findingCode.js";
export * from "./inputError.js";
export * from "./kitchen.js";
export * from "./kitchenFigures.js";
export * from "./kitchenWarnings.js";
export * from "./lot.js";
export * from "./ordinaryKitchens.js";
export * from "./plan.js";
export * from "./planDraws.js";
export { planFrom } from "./planFrom.js";
export * from "./problem.js";
export * from "./programme.js";
export { schemaFindings } from "./schemaFindings.js";
export * from "./simulationOf.js";
export * from "./wanted.js";
export * from "./wish.js";
export * from "./wraps.js";
