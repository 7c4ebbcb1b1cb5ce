/** What package.json asks for under "engines", in words. Node 21 and the first releases of 20 and 22 lack what the build tools need. */
export const neededNode = "Node 20.19 or newer of Node 20, or Node 22.12 or newer";

/** Whether a version of Node, as in `process.versions.node`, can build and run everything here: ^20.19.0 || >=22.12.0. */
export function isNodeNewEnough(version) {
  const [major = 0, minor = 0] = version.split(".").map(Number);
  if (major === 20) return minor >= 19;
  if (major === 22) return minor >= 12;
  return major > 22;
}

/** Ends the program, saying what to install, where Node is too old. */
export function requireNode(version = process.versions.node) {
  if (isNodeNewEnough(version)) return;
  console.error(
    `Keepwright needs ${neededNode}; this is Node ${version}.\nInstall a newer Node (22 is a good choice) and run the command again.`,
  );
  process.exit(1);
}
