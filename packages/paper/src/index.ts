export * from "./paperError.js";
export * from "./sheetPdf.js";
