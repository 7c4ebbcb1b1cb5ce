import { nodeDoor } from "./door/nodeDoor.js";
import { run } from "./run.js";

process.exitCode = run(process.argv.slice(2), nodeDoor());
