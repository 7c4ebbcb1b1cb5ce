import { loadSolver } from "@keepwright/planner";
import { nodeDoor } from "./door/nodeDoor.js";
import { runToEnd } from "./run.js";

const words = process.argv.slice(2);
const solver = words.includes("--prove") ? await loadSolver() : undefined;
process.exitCode = await runToEnd(words, { ...nodeDoor(), solver });
