import { catalogue, catalogueFor } from "@keepwright/catalogue";
import { readHaul } from "@keepwright/planner";
import { expect, it } from "vitest";

const read = (text: string, tag: string) => readHaul(text, catalogueFor(catalogue(), tag)).items[0]!;

it("“6 plátanos” are bananas in Mexico, planned and still asked about", () => {
  const item = read("6 plátanos", "es-MX");
  expect(item.kind === "lot" && item.lot.commodity).toBe("banana");
  expect(item.questions).toEqual([
    { ask: "which commodity", word: "plátanos", candidates: ["banana", "plantain"] },
  ]);
});

it("where no region is named they are only asked about", () => {
  expect(read("6 plátanos", "es-419").kind).toBe("question");
});

it("a text read in one region is read anew in another", () => {
  const kinds = ["es-MX", "es-ES", "es-MX"].map((tag) => {
    const item = read("4 limones", tag);
    return item.kind === "lot" && item.lot.commodity;
  });
  expect(kinds).toEqual(["lime", "lemon", "lime"]);
});
