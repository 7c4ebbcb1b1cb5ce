export * from "../setting/kitOptions.js";
export type { PageWords, SetPages } from "../setting/numbered.js";
export * from "../setting/paperError.js";
export * from "../setting/paperSizes.js";
export * from "../setting/setDocument.js";
export * from "../setting/setLabels.js";
export * from "../setting/setSheet.js";
export { fontFiles, type Typesetter, typstFiles } from "../setting/typesetter.js";
export * from "./browserTypesetter.js";
