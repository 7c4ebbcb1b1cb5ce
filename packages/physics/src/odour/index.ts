export * from "./odourConflicts.js";
