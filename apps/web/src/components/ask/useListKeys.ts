import { type KeyboardEvent, useState } from "react";

interface ListKeys {
  readonly typed: string;
  readonly found: readonly { readonly id: string }[];
  readonly onPick: (id: string) => void;
  readonly onEmpty: () => void;
}

/** Keys of a field with a list beneath: arrows go through it, Enter takes the one marked, Escape closes it and then empties the field. */
export function useListKeys({ typed, found, onPick, onEmpty }: ListKeys) {
  const [marked, setMarked] = useState(0);
  const [closed, setClosed] = useState(false);
  const open = typed !== "" && found.length > 0 && !closed;
  const at = Math.min(marked, found.length - 1);
  const again = () => {
    setMarked(0);
    setClosed(false);
  };
  const step = (by: number) => {
    if (closed) setClosed(false);
    else setMarked((at + by + found.length) % found.length);
  };
  const pick = (id: string) => {
    again();
    onPick(id);
  };
  const some = found.length > 0;
  const chosen = open ? found[at] : undefined;
  const keys: Record<string, (() => void) | undefined> = {
    ArrowDown: some ? () => step(1) : undefined,
    ArrowUp: some ? () => step(-1) : undefined,
    Enter: chosen && (() => pick(chosen.id)),
    Escape: typed === "" ? undefined : () => (open ? setClosed(true) : onEmpty()),
  };
  const onKeyDown = (event: KeyboardEvent) => {
    const act = event.nativeEvent.isComposing ? undefined : keys[event.key];
    if (!act) return;
    event.preventDefault();
    act();
  };
  return { open, at, again, pick, onKeyDown };
}
