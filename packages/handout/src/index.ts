export * from "./answer/answerItem.js";
export { type Apart, apartOf } from "./answer/apart.js";
export * from "./answer/askedAnswer.js";
export * from "./answer/itemAnswer.js";
export { lifeAt, type SteadyConditions } from "./answer/lifeAt.js";
export * from "./class/index.js";
export * from "./formats/carriedOnText.js";
export * from "./formats/json.js";
export * from "./formats/judgementText.js";
export * from "./formats/text.js";
export * from "./formats/twoWaysText.js";
export * from "./formats/whyText.js";
export * from "./formats/worthBuyingText.js";
export * from "./takeHome/index.js";
export { brokenLines } from "./takeHome/labels/fitText.js";
export * from "./view/amount.js";
export * from "./view/askedSources.js";
export * from "./view/askView.js";
export * from "./view/batchView.js";
export * from "./view/besideView.js";
export * from "./view/carriedOnView.js";
export * from "./view/commandLine.js";
export * from "./view/context.js";
export * from "./view/eating.js";
export { improvementSource } from "./view/improvementSource.js";
export * from "./view/improvementsView.js";
export * from "./view/itemView.js";
export { type JudgedLotRow, judgedLotRows, type LastingRow } from "./view/judgedLots.js";
export * from "./view/judgementView.js";
export * from "./view/kindNames.js";
export * from "./view/kindSources.js";
export * from "./view/kitchenView.js";
export * from "./view/lives.js";
export { lotReasonLines } from "./view/lotReasonLines.js";
export * from "./view/moves.js";
export * from "./view/names.js";
export { kitchenWords } from "./view/ordinaryNames.js";
export * from "./view/places.js";
export {
  type PlanParts,
  type PlanSurroundings,
  type PlanView,
  planParts,
  planView,
} from "./view/planView.js";
export * from "./view/preparation.js";
export { proofLines } from "./view/proofView.js";
export { publishedRuleLines } from "./view/publishedRules.js";
export * from "./view/readingView.js";
export * from "./view/reasons.js";
export * from "./view/sheet/sheetEating.js";
export * from "./view/sheet/sheetPlaces.js";
export * from "./view/sheet/sheetTasks.js";
export * from "./view/sheet/sheetView.js";
export * from "./view/twoWaysView.js";
export * from "./view/whyView.js";
export * from "./view/worthBuyingView.js";
export * from "./words/amounts.js";
export * from "./words/bundledLanguages.js";
export * from "./words/bundledLanguages.js";
export * from "./words/dates.js";
export * from "./words/languages.js";
export * from "./words/languages.js";
export * from "./words/message.js";
export * from "./words/plainText.js";
export * from "./words/spanish.js";
export * from "./words/spans.js";
export * from "./words/speaker.js";
