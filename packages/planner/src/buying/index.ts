export { buyable } from "./buyable.js";
export type { BuyingRequest } from "./checkWished.js";
export { buyingRule } from "./declared.js";
export * from "./worthBuying.js";
