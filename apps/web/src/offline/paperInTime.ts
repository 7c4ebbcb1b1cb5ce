import { keepPaperMessage } from "./keptPaper.js";

/** Wait after a visit began [ms], so that the first plan has the connection and the processor to itself. Declared, no source. */
const pause = 10_000;

/** What some browsers tell of the connection (Network Information API): not all of them do. */
interface Connection {
  readonly saveData?: boolean;
  readonly type?: string;
}

/**
 * Whether 12 MB may come without anybody having asked for them: not where data is to be saved or may be paid for by its amount. Where the browser
 * does not tell, a device that is used by a mouse is taken for one at a line, and any other for one that may be paid for by its amount.
 */
export function mayFetchUnasked(connection: Connection | undefined, finePointer: boolean): boolean {
  if (connection?.saveData) return false;
  if (connection?.type !== undefined) return connection.type === "wifi" || connection.type === "ethernet";
  return finePointer;
}

/** Has what pages are printed with kept on the device after the first visit began, so that it is there without a network, too. */
export function keepPaperInTime(): void {
  setTimeout(async () => {
    const { connection } = navigator as Navigator & { readonly connection?: Connection };
    if (!mayFetchUnasked(connection, matchMedia("(pointer: fine)").matches)) return;
    const { active } = await navigator.serviceWorker.ready;
    active?.postMessage(keepPaperMessage);
  }, pause);
}
