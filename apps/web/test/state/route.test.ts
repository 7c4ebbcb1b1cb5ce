import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { languageFor } from "../../src/state/language.js";
import { addressOf, readRoute, screens, whyAddress } from "../../src/state/route.js";

describe("addresses of screens", () => {
  it("are read back as they were written, whatever they are opened on", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...screens),
        fc.string({ minLength: 1, unit: "grapheme" }),
        (screen, on) => {
          expect(readRoute(addressOf(screen, on))).toEqual({ screen, on });
        },
      ),
    );
    for (const screen of screens) expect(readRoute(addressOf(screen))).toEqual({ screen, on: undefined });
  });

  it("of the reasons for a part lie over the plan and are read back, whatever its id", () => {
    fc.assert(
      fc.property(fc.string({ minLength: 1, unit: "grapheme" }), (part) => {
        expect(readRoute(whyAddress(part))).toEqual({ screen: "unpack", on: undefined, why: part });
      }),
    );
    expect(readRoute("#/why")).toEqual({ screen: "unpack", on: undefined, why: undefined });
  });

  it.each(["", "#", "#/", "#/nowhere", "#unpack", "#/constructor", "#/ask/%E0%A4%A"])(
    "%j opens a screen",
    (hash) => {
      expect(screens).toContain(readRoute(hash).screen);
    },
  );
});

describe("the language of the page", () => {
  it.each([
    ["device", ["es-MX", "en-US"], "es"],
    ["device", ["pt-BR", "es"], "es"],
    ["device", ["de", "fr"], "en"],
    ["device", [], "en"],
    ["en", ["es"], "en"],
    ["es", ["en"], "es"],
  ] as const)("%s with %j is %s", (choice, preferred, language) => {
    expect(languageFor(choice, preferred)).toBe(language);
  });
});
