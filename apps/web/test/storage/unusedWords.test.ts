import { sayer } from "@keepwright/handout";
import { expect, it } from "vitest";
import { unusedLine } from "../../src/components/settings/UnusedList.js";
import { restoreAll } from "../../src/storage/restore.js";
import { settingsEnglish } from "../../src/words/english/settings.js";
import { settingsSpanish } from "../../src/words/spanish/settings.js";
import { how, otherwise } from "../support/states.js";

it("a field that could not be used is named in the person's words, and as it stands in the file", () => {
  const { unused } = restoreAll({ ...otherwise, people: 40 }, how);
  const told = unused.map((each) => [
    unusedLine(sayer<typeof settingsEnglish>("en", settingsEnglish), each),
    unusedLine(sayer<typeof settingsEnglish>("es", settingsSpanish), each),
  ]);
  expect(told).toEqual([
    [
      "people: 40. Write a whole number from 1 to 12.",
      expect.stringMatching(/^personas \(people\): 40\. Escribe /),
    ],
  ]);
});
