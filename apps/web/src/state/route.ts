/** The screens of the page, in the order of their links. */
export const screens = ["unpack", "kitchen", "mine", "ways", "ask", "class", "settings"] as const;
export type Screen = (typeof screens)[number];

/** Where the person is: a screen, and what it is opened on (a kind to ask about). */
export interface Route {
  readonly screen: Screen;
  readonly on: string | undefined;
  /** The part of a plan whose reasons lie open over the plan. */
  readonly why?: string | undefined;
}

/**
 * Reads the part of the address behind #, such as "#/ask/carrot". It stays on the device: nothing behind # is ever sent.
 * Anything that is no screen opens the first one.
 */
export function readRoute(hash: string): Route {
  const [name, on] = hash.replace(/^#\/?/, "").split("/");
  if (name === "why") return { screen: "unpack", on: undefined, why: on ? decoded(on) : undefined };
  const screen = screens.find((each) => each === name) ?? "unpack";
  return { screen, on: on ? decoded(on) : undefined };
}

function decoded(part: string): string | undefined {
  try {
    return decodeURIComponent(part);
  } catch {
    return undefined;
  }
}

/** The address of a screen, for links. */
export const addressOf = (screen: Screen, on?: string): string =>
  on === undefined ? `#/${screen}` : `#/${screen}/${encodeURIComponent(on)}`;

/** The address of the reasons for a part of the plan. */
export const whyAddress = (part: string): string => `#/why/${encodeURIComponent(part)}`;
