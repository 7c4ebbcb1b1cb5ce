import { createContext, useContext } from "react";
import type { LanguageKey } from "../state/language.js";
import type { useFigures } from "./useFigures.js";
import type { useHaul } from "./useHaul.js";
import type { WorkedOut } from "./useWorkedOut.js";

/** What every screen works with: what the person entered, and what follows from it. It outlives a change of screen. */
export interface Desk {
  readonly haul: ReturnType<typeof useHaul>;
  readonly figures: ReturnType<typeof useFigures>;
  readonly worked: WorkedOut | undefined;
  readonly language: LanguageKey;
  /** BCP 47 tag by which the page writes dates and numbers. */
  readonly tag: string;
}

const DeskContext = createContext<Desk | undefined>(undefined);
export const DeskProvider = DeskContext.Provider;

/** The desk of the page; used outside of it is a mistake. */
export function useDesk(): Desk {
  const desk = useContext(DeskContext);
  if (!desk) throw new Error("There is no desk here: the screen has to be drawn within DeskProvider.");
  return desk;
}
