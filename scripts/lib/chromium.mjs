import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import { run } from "./run.mjs";

const places = [
  process.env.KEEPWRIGHT_CHROMIUM,
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/usr/bin/google-chrome",
  "/usr/bin/google-chrome-stable",
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
  "C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe",
];

/** Path of a Chromium-family browser on this machine, or undefined. */
export const findChromium = () => places.find((path) => path !== undefined && existsSync(path));

const canUseApt = () =>
  process.platform === "linux" &&
  process.getuid?.() === 0 &&
  spawnSync("apt-get", ["--version"], { stdio: "ignore" }).status === 0;

/** Finds a browser; installs Debian's chromium when there is none and apt is there. Undefined when neither works. */
export function ensureChromium() {
  const found = findChromium();
  if (found || !canUseApt()) return found;
  console.log("Installing Debian's chromium for the browser journeys …");
  const quiet = {
    stdio: ["ignore", "ignore", "inherit"],
    env: { ...process.env, DEBIAN_FRONTEND: "noninteractive" },
  };
  if (run("apt-get", ["update", "-qq"], quiet) !== 0)
    console.error("apt-get update failed; trying the lists at hand.");
  run("apt-get", ["install", "-y", "-qq", "--no-install-recommends", "chromium"], quiet);
  return findChromium();
}
