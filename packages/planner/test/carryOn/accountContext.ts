import { catalogue } from "@keepwright/catalogue";
import { ordinaryKitchens } from "../../src/problem/ordinaryKitchens.js";

/** What there was and where it may lie, for accounts of it. */
export const accountContext = {
  catalogue: catalogue(),
  lots: [
    { id: "lot-1", commodity: "apple", typed: "8 apples" },
    { id: "lot-2", commodity: "spinach", typed: "spinach" },
    { id: "lot-3", commodity: "avocado", typed: "3 avocados" },
    { id: "lot-4", commodity: "kale", typed: "a bunch of kale" },
    { id: "lot-5", commodity: "cantaloupe", typed: "a melon" },
    { id: "lot-6", commodity: "tomato", typed: "6 tomatoes" },
    { id: "lot-7", commodity: "salad-leaves", typed: "a bag of salad" },
  ],
  places: ordinaryKitchens.ordinary.places.map((place) =>
    place.id === "left-drawer" ? { ...place, also: ["Cajón izquierdo"] } : place,
  ),
  on: "2026-06-16",
};
