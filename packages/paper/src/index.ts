export * from "./node/pdfs.js";
export * from "./setting/kitOptions.js";
export type { PageWords, SetPages } from "./setting/numbered.js";
export * from "./setting/paperError.js";
export * from "./setting/paperSizes.js";
export * from "./setting/setDocument.js";
export * from "./setting/setLabels.js";
export * from "./setting/setSheet.js";
export * from "./slides/slidesPptx.js";
