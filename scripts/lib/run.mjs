import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";

/** The repository's root folder. */
export const root = fileURLToPath(new URL("../..", import.meta.url));

/** Runs a command at the root with its output shown; returns its exit code. */
export function run(command, args, options = {}) {
  const shell = process.platform === "win32";
  const result = spawnSync(command, args, { cwd: root, stdio: "inherit", shell, ...options });
  if (result.error) console.error(`Could not run ${command}: ${result.error.message}`);
  return result.status ?? 1;
}

/** Runs a command and ends the process with its code when it fails, saying which step it was. */
export function mustRun(step, command, args, options) {
  const code = run(command, args, options);
  if (code !== 0) {
    console.error(`\n${step} failed (exit code ${code}).`);
    process.exit(code);
  }
}

/** Runs a tool that npm installed, through Node, so that no shell look-up is needed. */
export const toolPath = (path) => `${root}/node_modules/${path}`;
