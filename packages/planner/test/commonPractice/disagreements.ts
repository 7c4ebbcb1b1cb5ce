/** Advice that the plan does not follow, and why. A test fails when one of them starts to agree, or another stops. */
export const disagreements: Readonly<Record<string, string>> = {
  "leafy greens in the humid drawer and fruit in the vented one":
    "The greens lie in the damper drawer and fruit that has ripened in the vented one, as advised. But strawberries and oranges lie with the greens: in a few days damp air costs them little " +
    "in the model (the size of decay in damp air is common practice, no source), and the ethylene of both drawers is nearly that of the whole refrigerator.",
  "whole tomatoes out of the refrigerator":
    "They are eaten on the first day. One portion in five is taken to be eaten three days late, and for those the model finds over-ripening at 20 °C a little dearer than the flavour lost in " +
    "a door at 6 °C. That flavour suffers after two days below 13 °C was read; how much is our own figure, and it decides.",
  "bananas out of the refrigerator":
    "They ripen on the counter, as advised. Ripe, they move to the refrigerator door at 6 °C, which slows over-ripening; the darker skin counts a little. The 5.5 °C that a ripe banana is taken to bear is " +
    "fitted to what is told at home.",
};
