export { comparisonDocument } from "./comparisonDocument.js";
export { kitTwoWaysView, layKit } from "./layKit.js";
