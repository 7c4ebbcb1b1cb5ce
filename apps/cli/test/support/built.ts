import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import { fileURLToPath } from "node:url";

export const root = fileURLToPath(new URL("../../../../", import.meta.url));
const bin = `${root}apps/cli/bin/keepwright.js`;

/** Runs the built command as a person would. Fails clearly where it has not been built. */
export function keepwright(words: readonly string[], input: string | Uint8Array = "") {
  if (!existsSync(`${root}apps/cli/dist/main.js`)) {
    throw new Error(
      "apps/cli/dist/main.js is missing. Run `npm run build` (node scripts/build.mjs) before these tests.",
    );
  }
  const { status, stdout, stderr } = spawnSync(process.execPath, [bin, ...words], {
    input,
    cwd: root,
    encoding: "utf8",
  });
  return { code: status, out: stdout, err: stderr };
}
