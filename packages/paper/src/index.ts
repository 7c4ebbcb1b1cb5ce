export * from "./documentPdf.js";
export * from "./paperError.js";
export * from "./sheetPdf.js";
export * from "./slides/slidesPptx.js";
