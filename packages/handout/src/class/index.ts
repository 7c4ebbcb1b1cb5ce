export { type ClassSay, classSayer, classWords } from "../words/class/classSayer.js";
export * from "./classContext.js";
export * from "./classItems.js";
export * from "./classKit.js";
export * from "./classRequest.js";
export * from "./comparison/index.js";
export * from "./makeKit.js";
export * from "./slides/index.js";
