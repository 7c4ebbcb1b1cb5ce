/** La cocina y quiénes comen. */
export const kitchenSpanish = {
  "kitchen.heading": "La cocina y quiénes comen",
  "kitchen.choose": "La cocina más parecida a la tuya",
  "kitchen.people": "Personas",
  "kitchen.days": "Días del plan",
  "kitchen.units": "Medidas",
  "kitchen.metric": "°C y kilos",
  "kitchen.us": "°F y libras",
  "kitchen.apart": "Cada una por separado (Ajustes)",
  "kitchen.details": "Cómo se supone que es esta cocina",
  "kitchen.own": "Las tuyas",
  "kitchen.ordinary": "Cocinas comunes",
  "kitchen.describe": "Mi cocina",
  "kitchen.moreEating": "Porciones y días fuera",
  "kitchen.portions": "Porciones por persona al día",
  "kitchen.away": "Días en que nadie come en casa",
  "kitchen.awayNote":
    "Lo que pesa una porción depende de la cosa; las hierbas y lo que solo da sabor no cuentan. El consejo usual son cinco al día (OMS, 400 g al día; de memoria).",
} as const;
