import type { Messages } from "../message.js";

/** Cautions. Their figures are the safety limits of the catalogue; a test compares them. */
export const safetyWords = {
  // Cautions. Their figures are the safety limits of the catalogue; a test compares them.
  "caution.no-refrigerator-for-cut-produce":
    "There is no refrigerator for what is cut. Eat it within two hours (one hour where it is hotter than 32 °C or 90 °F), or throw it away.",
  "caution.must-be-cooked":
    "{names}: cook all the way through before eating. Raw or half cooked it can make people ill. How to prepare it: look it up by its name.",
  "caution.wild-mushrooms":
    "Wild mushrooms: eat them only if an expert has seen each one. Cook them all the way through. If in doubt, throw them out.",
  "caution.cut-produce":
    "Cut fruit and vegetables: cover them and put them in the refrigerator within two hours of cutting (one hour where it is hotter than 32 °C or 90 °F).",
  "caution.cut-ready-to-eat":
    "Cut melon, cut tomato and cut leaves: keep them at 5 °C (41 °F) or colder. Eat them within seven days at most, counting the day they were cut, even if they still look good.",
  "caution.refrigerator-too-warm": "The refrigerator is warmer than 4.4 °C (40 °F). Turn it colder.",
  "caution.green-potatoes":
    "Potatoes: cut away green parts and sprouts; throw the potato out if it is green through or bitter.",
  "caution.mould-soft":
    "Mould on fruit, or on anything soft or cut: throw the piece away, however small the spot. Do not sniff it. Look over those next to it.",
  "caution.mould-firm":
    "Firm, whole vegetables such as carrots, cabbages and sweet peppers, with a small spot of mould: cut away at least 2.5 cm (1 inch) around and below it, and keep the knife out of the mould. Not sweet potatoes or parsnips, nor anything you are not sure of: throw those away.",
  "caution.garlic-in-oil":
    "Home-made garlic in oil: refrigerate it at once, use it within four days, and never leave it at room temperature.",
  "caution.washed-greens": "Ready-washed leaves: keep cold all the time and use by the date on the bag.",
  "caution.safe-time-past":
    "Throw away: {names}. Cut or opened too long ago to be eaten safely, even where all still looks good.",
  "caution.wash":
    "Wash whole fruit and vegetables under running water just before eating or cutting, also those that are peeled.",
  "caution.overflow": "{place}: over-full by about {litres}. Eat or give away some first.",
  "caution.unnamed": "Take care: {name}.",
  "caution.local": "Check with your local food-safety authority. When in doubt, throw it out.",
} as const satisfies Messages;
