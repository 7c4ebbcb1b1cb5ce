/** The kitchen and who eats. */
export const kitchenEnglish = {
  "kitchen.heading": "The kitchen and who eats",
  "kitchen.choose": "Kitchen most like yours",
  "kitchen.people": "People",
  "kitchen.days": "Days to plan",
  "kitchen.units": "Units",
  "kitchen.metric": "°C and kilograms",
  "kitchen.us": "°F and pounds",
  "kitchen.apart": "Each chosen apart (Settings)",
  "kitchen.details": "What this kitchen is taken to be",
} as const;
