/** La cocina y quiénes comen. */
export const kitchenSpanish = {
  "kitchen.heading": "La cocina y quiénes comen",
  "kitchen.choose": "La cocina más parecida a la tuya",
  "kitchen.people": "Personas",
  "kitchen.days": "Días del plan",
  "kitchen.units": "Medidas",
  "kitchen.metric": "°C y kilos",
  "kitchen.us": "°F y libras",
  "kitchen.apart": "Cada una por su lado (Ajustes)",
  "kitchen.details": "Cómo se supone que es esta cocina",
} as const;
