import { spawn } from "node:child_process";

function opener() {
  if (process.platform === "darwin") return ["open", []];
  if (process.platform === "win32") return ["cmd", ["/c", "start", ""]];
  const hasScreen = process.env.DISPLAY || process.env.WAYLAND_DISPLAY;
  return hasScreen ? ["xdg-open", []] : undefined;
}

/** Opens an address in the person's browser if there is one; silently does nothing otherwise (servers, CI). */
export function openInBrowser(address) {
  const found = process.env.CI ? undefined : opener();
  if (!found) return;
  const child = spawn(found[0], [...found[1], address], { stdio: "ignore", detached: true });
  child.on("error", () => {});
  child.unref();
}
