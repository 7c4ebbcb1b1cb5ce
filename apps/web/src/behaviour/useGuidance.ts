import { type KindGuidance, loadGuidance } from "@keepwright/catalogue";
import { useEffect, useState } from "react";
import type { LanguageKey } from "../state/language.js";

const none: ReadonlyMap<string, KindGuidance> = new Map();

/** What is told of the kinds in a language: signs, saving, hazards; undefined while it is on its way, none where it cannot be had. */
export function useGuidance(language: LanguageKey): ReadonlyMap<string, KindGuidance> | undefined {
  const [told, setTold] = useState<{ language: LanguageKey; guidance: ReadonlyMap<string, KindGuidance> }>();
  useEffect(() => {
    let wanted = true;
    loadGuidance(language).then(
      (guidance) => wanted && setTold({ language, guidance }),
      () => wanted && setTold({ language, guidance: none }),
    );
    return () => {
      wanted = false;
    };
  }, [language]);
  return told?.language === language ? told.guidance : undefined;
}
