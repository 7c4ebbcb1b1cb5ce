import type { Messages } from "../message.js";

/** Qué tan lejos puede estar un plan del mejor posible. */
export const proofSpanish = {
  "heading.proof": "Cuánto podría mejorar",
  "proof.bound":
    "Si se junta lo que se pierde, el sabor, lo que dura y el trabajo, este plan cuesta {value}. Según el modelo, ningún plan para esta compra en esta cocina cuesta menos de {bound}. Uno mejor salvaría, como máximo, {share}.",
  "proof.best":
    "Si se junta lo que se pierde, el sabor, lo que dura y el trabajo, este plan cuesta {value}. Según el modelo, ningún otro plan para esta compra en esta cocina es mejor por más de una migaja.",
  "proof.note":
    "Ese límite toma lo mejor de cada cosa a la vez. El mejor plan de verdad suele estar más cerca de este. Habla del modelo, no de si el modelo acierta.",
  "proof.wishes": "Lo que quieres para un día fijo no cuenta en ese límite.",
} as const satisfies Messages;
