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
  "kitchen.own": "Your own",
  "kitchen.ordinary": "Ordinary kitchens",
  "kitchen.describe": "My kitchen",
  "kitchen.moreEating": "Portions, and days away",
  "kitchen.portions": "Portions a person eats a day",
  "kitchen.away": "Days nobody eats at home",
  "kitchen.awayNote":
    "What a portion weighs differs by kind; herbs and other seasonings do not count. Five a day is the usual advice (WHO, 400 g a day; from memory).",
} as const;
