import { catalogue, catalogueFor } from "@keepwright/catalogue";
import { describe, expect, it } from "vitest";
import { withLine, wordsForKind } from "../../src/state/addedLine.js";
import { readLines } from "../../src/state/readLines.js";

describe("a line added by its kind", () => {
  it.each(["en-GB", "en-US", "es-419", "es-MX", "es-AR"])(
    "is read as that kind, without a question, in %s",
    (tag) => {
      const here = catalogueFor(catalogue(), tag);
      const asked = [...catalogue().commodities.keys()].filter((id) => {
        const line = readLines(wordsForKind(id, tag, { catalogue: here, read: readLines }), {}, here)[0];
        return line?.kind !== "lot" || line.lot.commodity !== id || line.item.questions.length > 0;
      });
      expect(asked).toEqual([]);
    },
  );
  it("comes after what is there, on a line of its own", () => {
    expect(withLine("  ", "figs")).toBe("figs");
    expect(withLine("2 kg apples\n\n", "figs")).toBe("2 kg apples\nfigs");
  });
});
