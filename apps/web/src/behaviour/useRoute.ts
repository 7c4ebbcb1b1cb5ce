import { useSyncExternalStore } from "react";
import { type Route, readRoute } from "../state/route.js";

const listen = (changed: () => void) => {
  addEventListener("hashchange", changed);
  return () => removeEventListener("hashchange", changed);
};

let last: { readonly hash: string; readonly route: Route } | undefined;
/** One and the same route as long as the address stays, as the store's reader has to give. */
function current(): Route {
  if (last?.hash !== location.hash) last = { hash: location.hash, route: readRoute(location.hash) };
  return last.route;
}

/** The screen that the address names. */
export const useRoute = (): Route => useSyncExternalStore(listen, current);
