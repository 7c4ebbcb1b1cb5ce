import {
  createContext,
  type KeyboardEvent,
  type MouseEvent,
  type PointerEvent,
  useContext,
  useEffect,
  useMemo,
  useRef,
  useState,
} from "react";
import { useStable } from "./useStable.js";

/** A part of a lot in the hand, over a place or over none. */
export interface Carried {
  readonly part: string;
  readonly over: string | undefined;
  readonly by: "pointer" | "keys";
  /** Where the pointer is in the window [px]. */
  readonly x: number;
  readonly y: number;
}

/** Way of the pointer from which it is dragging and no longer a shaky touch [px]: declared preference, no source. */
const leastWay = 8;
/** How long a finger rests on a drawn part to pick it up, where moving at once scrolls the page [ms]: declared preference, no source. */
const rest = 450;
/** Nearness to the edge of the window at which the page runs along, and by how much each time it is drawn [px]. */
const edge = 70;
const run = 12;

const placeAt = (x: number, y: number): string | undefined => {
  const found = document.elementFromPoint(x, y)?.closest("[data-place]");
  return found?.getAttribute("data-place") ?? undefined;
};

interface CarryingFor {
  /** Places in the order the arrow keys go through them. */
  readonly places: readonly string[];
  readonly placeOf: (part: string) => string | undefined;
  readonly onDrop: (part: string, place: string) => void;
}

/** Picks parts up by pointer or by keys and drops them in places. Escape, or a pointer that is lost, puts them back. */
export function useCarrying({ places, placeOf, onDrop }: CarryingFor) {
  const [carried, setCarried] = useState<Carried | undefined>();
  const drop = useStable(({ part, over }: Carried) => {
    setCarried(undefined);
    if (over !== undefined && over !== placeOf(part)) onDrop(part, over);
  });
  const { handle, letGo } = useHandles({ carried, setCarried, drop });
  useRunAlong(carried, setCarried);
  useEscape(carried !== undefined, letGo);

  const step = (from: Carried, by: number) => {
    const next = (places.indexOf(from.over ?? "") + by + places.length) % places.length;
    const over = places[next] ?? "";
    document.querySelector(`[data-place="${CSS.escape(over)}"]`)?.scrollIntoView({ block: "nearest" });
    setCarried({ ...from, over });
  };
  const onKeyDown = useStable((event: KeyboardEvent, part: string) => {
    const held = carried?.by === "keys" && carried.part === part ? carried : undefined;
    const by = { ArrowDown: 1, ArrowRight: 1, ArrowUp: -1, ArrowLeft: -1 }[event.key];
    if (held && by !== undefined) step(held, by);
    else if (held && (event.key === " " || event.key === "Enter")) drop(held);
    else if (!held && event.key === " ") setCarried({ part, over: placeOf(part), by: "keys", x: 0, y: 0 });
    else return;
    event.preventDefault();
  });
  // One and the same while what is in the hand is: a new one has every part drawn anew.
  return useMemo(() => {
    const keys = (part: string) => ({
      onKeyDown: (event: KeyboardEvent) => onKeyDown(event, part),
      // The button would be clicked by the space that picks up.
      onKeyUp: (event: KeyboardEvent) => event.key === " " && event.preventDefault(),
      onBlur: () => carried?.by === "keys" && setCarried(undefined),
    });
    return { carried, handle, keys };
  }, [carried]);
}

interface HandlesFor {
  readonly carried: Carried | undefined;
  readonly setCarried: (next: Carried | undefined) => void;
  readonly drop: (carried: Carried) => void;
}

/** Handles by which a pointer drags parts. */
function useHandles({ carried, setCarried, drop }: HandlesFor) {
  const start = useRef<{ readonly part: string; readonly x: number; readonly y: number } | undefined>(
    undefined,
  );
  const dragged = useRef(false);
  const resting = useRest();
  const letGo = () => {
    resting.end();
    start.current = undefined;
    setCarried(undefined);
  };
  /** A handle for a part. `touch`: whether a finger drags it at once; where not, it scrolls the page unless it has rested there. */
  const handle = (part: string, touch: boolean) => ({
    onPointerDown(event: PointerEvent<Element>) {
      dragged.current = false;
      if (event.button !== 0) return;
      const { clientX: x, clientY: y, currentTarget, pointerId } = event;
      start.current = { part, x, y };
      currentTarget.setPointerCapture(pointerId);
      if (event.pointerType !== "touch" || touch) return;
      resting.begin(() => {
        dragged.current = true;
        setCarried({ part, over: placeAt(x, y), by: "pointer", x, y });
      });
    },
    onPointerMove(event: PointerEvent<Element>) {
      const from = start.current;
      if (!from) return;
      const { clientX: x, clientY: y } = event;
      if (!dragged.current && Math.hypot(x - from.x, y - from.y) < leastWay) return;
      if (!dragged.current && resting.begun()) {
        letGo();
        return;
      }
      dragged.current = true;
      setCarried({ part: from.part, over: placeAt(x, y), by: "pointer", x, y });
    },
    onPointerUp() {
      resting.end();
      start.current = undefined;
      if (carried?.by === "pointer") drop(carried);
    },
    onPointerCancel: letGo,
    /** A drag ends in a click of what was dragged, which is none. */
    onClickCapture(event: MouseEvent) {
      if (!dragged.current) return;
      dragged.current = false;
      event.preventDefault();
      event.stopPropagation();
    },
  });
  return { handle, letGo };
}

const holdPage = (event: TouchEvent) => event.preventDefault();

/** A finger that rests where it was put down; once it has, the page is held still until it is lifted. */
function useRest() {
  const timer = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  return useMemo(() => {
    const end = () => {
      clearTimeout(timer.current);
      timer.current = undefined;
      removeEventListener("touchmove", holdPage);
    };
    return {
      begin(rested: () => void) {
        end();
        timer.current = setTimeout(() => {
          timer.current = undefined;
          addEventListener("touchmove", holdPage, { passive: false });
          rested();
        }, rest);
      },
      /** Whether a finger is down that has not rested long enough. */
      begun: () => timer.current !== undefined,
      end,
    };
  }, []);
}

export interface Carrying extends ReturnType<typeof useCarrying> {
  /** Opens the lists of places and wraps for a part. */
  readonly openMenu: (part: string) => void;
}

/** The page runs along while something is held near its upper or lower edge. */
function useRunAlong(
  carried: Carried | undefined,
  setCarried: (next: (before: Carried | undefined) => Carried | undefined) => void,
) {
  const near =
    carried?.by !== "pointer" ? 0 : carried.y < edge ? -run : carried.y > innerHeight - edge ? run : 0;
  useEffect(() => {
    if (near === 0) return;
    let frame = requestAnimationFrame(function along() {
      scrollBy({ top: near, behavior: "instant" });
      setCarried((before) => before && { ...before, over: placeAt(before.x, before.y) });
      frame = requestAnimationFrame(along);
    });
    return () => cancelAnimationFrame(frame);
  }, [near, setCarried]);
}

function useEscape(carrying: boolean, onEscape: () => void) {
  const last = useRef(onEscape);
  last.current = onEscape;
  useEffect(() => {
    if (!carrying) return;
    const listen = (event: globalThis.KeyboardEvent) => event.key === "Escape" && last.current();
    addEventListener("keydown", listen);
    return () => removeEventListener("keydown", listen);
  }, [carrying]);
}

const CarryingContext = createContext<Carrying | undefined>(undefined);
export const CarryingProvider = CarryingContext.Provider;
/** What is in the hand and how things are picked up; undefined where nothing can be moved. */
export const useCarried = (): Carrying | undefined => useContext(CarryingContext);
