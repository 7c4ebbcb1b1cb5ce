import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";

const folder = fileURLToPath(new URL("../src/styles/", import.meta.url));

describe("the styles", () => {
  // What holds on paper only is no rule while one types.
  it.each(readdirSync(folder).filter((file) => file.endsWith(".css") && file !== "print.css"))(
    "of %s never ask the whole document what it holds, which has it styled again at every letter",
    (file) => {
      const css = readFileSync(`${folder}${file}`, "utf8");
      expect(css.match(/(?:^|[\s,}])(?:body|html|:root|main|#root|#screen):has\([^)]*\)/g) ?? []).toEqual([]);
    },
  );
});
