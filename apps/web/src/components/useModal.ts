import { type RefObject, useLayoutEffect, useRef } from "react";

/** A dialog over the page for as long as its component is there. */
export interface Modal {
  /** For the `dialog` element itself. */
  readonly props: { readonly ref: RefObject<HTMLDialogElement | null>; readonly onClose: () => void };
  readonly close: () => void;
}

/** Opens a dialog with its component; `closed` is called when the person closes it. */
export function useModal(closed: () => void): Modal {
  const ref = useRef<HTMLDialogElement>(null);
  // Closed before it is taken away, so that the focus goes back to where it was.
  useLayoutEffect(() => {
    const own = ref.current;
    own?.showModal();
    return () => own?.close();
  }, []);
  return { props: { ref, onClose: () => ref.current?.open || closed() }, close: () => ref.current?.close() };
}
