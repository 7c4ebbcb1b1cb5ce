/** What is worth buying, as declared: preferences with no source, for the reasons in the record "What is worth buying". */
export const buyingRule = {
  /** A gram eaten before it is past its best counts as much as a gram wasted; a gram left over that is still good counts as neither. */
  wastedAgainstEaten: 1,
  /** A unit adds something when it adds this share of its own mass or more: less is the planner's own unevenness. */
  leastShareAdded: 0.02,
  /** A unit of which this share or more is expected to be eaten at its best is not questioned by itself. */
  unquestionedShare: 0.75,
  /** Step of weight for what is not bought by the piece [g]. */
  stepGrams: 100,
  /** Most units a wish is taken apart into. */
  mostUnits: 20,
} as const;
