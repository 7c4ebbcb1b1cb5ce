/** Advice that the plans do not always follow: how many of the settings do, and why. A test fails when that number changes, up or down. */
export interface Disagreement {
  readonly followed: number;
  readonly why: string;
}

export const disagreements: Readonly<Record<string, Disagreement>> = {
  "apples apart from citrus": {
    followed: 7,
    why:
      "Once, for four people with a cellar, apples lie in the cellar with oranges and lemons, which lose less by their gas than the greens in the refrigerator would. What it costs them is counted; of the plans that were looked at this one costs least all " +
      "the same. In the seven others they lie apart, not because the planner is told so.",
  },
  "onions in the cool dark place": {
    followed: 2,
    why:
      "Onions lie dry and loose in the refrigerator, but for four and five people with a cellar, where they lie in the cupboard. Published sprouting is slowest near 0 °C and fastest at 10 to 20 °C, so 4 °C keeps them two to three times longer than a cupboard " +
      "at 17 °C as long as the air is dry (the days to sprout at 5 °C are inferred). The advice holds for damp refrigerators and for the smell, which is counted, but little: the size of damp rot and of smells is common practice, no source. Asked about alone, onions are told to lie outside the refrigerator (a declared rule, decision 0113).",
  },
  "leafy greens in the humid drawer and fruit in the vented one": {
    followed: 0,
    why:
      "Lettuce and spinach mostly lie on the shelf in bags with holes, which are as damp as a closed drawer; strawberries and oranges lie with kale: in a few days damp air costs them little " +
      "in the model (the size of decay in damp air is common practice, no source), and the ethylene of both drawers is nearly that of the whole refrigerator.",
  },
  "whole tomatoes out of the refrigerator": {
    followed: 0,
    why:
      "They ripen in the cupboard, as advised, and what is not eaten at once then goes to the cold, for one portion in five is taken to be eaten three days late: for those the model finds over-ripening at 20 °C a little dearer than " +
      "the flavour lost at 6 °C. That flavour suffers after two days below 13 °C was read; how much is our own figure, and it decides.",
  },
  "bananas out of the refrigerator": {
    followed: 0,
    why:
      "They ripen on the counter, as advised. Ripe, they move to the refrigerator door at 6 °C, which slows over-ripening; the darker skin counts a little. The 5.5 °C that a ripe banana is taken to bear is " +
      "fitted to what is told at home.",
  },
};
