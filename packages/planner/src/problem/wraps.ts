/** Names of the wraps a plan may tell, none among them. */
export const wrapIds = [
  "none",
  "paper bag",
  "perforated bag",
  "closed film bag",
  "damp towel",
  "beeswax cloth",
  "foil",
  "lidded box",
  "glass of water",
] as const;
