import { z } from "zod";

const days = z.strictObject({ value: z.number(), unit: z.literal("d") });

const neighbourSchema = z.strictObject({
  lot: z.string().describe("Id of the lot; the lot's own where it is the rest of it, in another part"),
  commodity: z.string(),
  lifeWithout: days.describe("Middle life here if this neighbour alone were gone"),
  daysLost: days.describe("That less the life here"),
  byEthylene: days.describe(
    "The same if only the ethylene it gives to the air were gone, and its vapour stayed",
  ),
  byVapour: days.describe(
    "The same if only the vapour it gives to the air were gone: above 0 its damp costs days, below 0 it saves them",
  ),
  jointMeans: z
    .boolean()
    .describe("The days by ethylene and by vapour do not add up to the days lost: the two act together"),
  daysLostBesideItAlone: days.describe("Life here with no neighbour at all, less that with this one only"),
});
/** What one neighbour does to a life. */
export type Neighbour = z.infer<typeof neighbourSchema>;

/** What neighbours do to the middle life of something where it lies, found by leaving them out of the simulation. */
export const neighbourhoodSchema = z.strictObject({
  lifeAlone: days.describe("Middle life in the same place and wrap with no neighbour in the kitchen"),
  lostToNeighbours: days.describe("That less the life here; below 0: it lasts longer in company"),
  lostByEthylene: days.describe("Life with the ethylene of every neighbour left out, less the life here"),
  lostByVapour: days.describe("Life with the vapour of every neighbour left out, less the life here"),
  neighbours: z
    .array(neighbourSchema)
    .describe(
      "Those that shorten its life, left out or as the only one or by one of the two means; the worst first",
    ),
  helpers: z
    .array(neighbourSchema)
    .describe("Those without which it would not last as long, all in all, the best first"),
  lostToRest: days.describe("What all others take one by one, each too little to name; their sum"),
  joint: z
    .boolean()
    .describe(
      "What neighbours, helpers and the rest take one by one does not add up to what they take: they act together",
    ),
});
export type Neighbourhood = z.infer<typeof neighbourhoodSchema>;
