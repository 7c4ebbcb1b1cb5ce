import { afterEach, beforeEach } from "vitest";
import type { Keeper } from "../../src/storage/keeper.js";
import { Device } from "./device.js";

/** A device of its own for every test of a file. */
export function useDevice(): () => Device {
  let device: Device | undefined;
  beforeEach(() => {
    device = new Device();
  });
  afterEach(() => device?.close());
  return () => {
    if (!device) throw new Error("There is no device yet: ask for it within a test.");
    return device;
  };
}

/** What stands in the box of a tab. */
export const textOf = (tab: Keeper): string => tab.now().state.text;

/** Writes words in a tab, long enough after anything before to be a step of its own. */
export const typingOn = (device: () => Device) => (tab: Keeper, words: string) => {
  device().time += 10_000;
  tab.change({ change: "text", text: words });
};
