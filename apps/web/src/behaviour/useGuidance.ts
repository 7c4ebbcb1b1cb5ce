import { type KindGuidance, loadGuidance } from "@keepwright/catalogue";
import { useEffect, useState } from "react";
import type { LanguageKey } from "../state/language.js";

/** What is told of the kinds in a language: signs, saving, hazards; undefined while it is on its way or cannot be had. */
export function useGuidance(language: LanguageKey): ReadonlyMap<string, KindGuidance> | undefined {
  const [told, setTold] = useState<{ language: LanguageKey; guidance: ReadonlyMap<string, KindGuidance> }>();
  useEffect(() => {
    let wanted = true;
    loadGuidance(language).then(
      (guidance) => wanted && setTold({ language, guidance }),
      () => undefined,
    );
    return () => {
      wanted = false;
    };
  }, [language]);
  return told?.language === language ? told.guidance : undefined;
}
