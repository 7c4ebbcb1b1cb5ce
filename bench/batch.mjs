// Makes plans and pages of invented boxes of twelve kinds by `keepwright batch`, of one number of boxes and of ten times as many, and
// compares time, processor time and memory. Each line is one JSON object. Needs built packages (npm run build). Sizes: BATCH_SIZES="100,1000".
import { spawn } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { availableParallelism, loadavg, tmpdir } from "node:os";
import { join } from "node:path";
import { boxes } from "./lib/boxes.mjs";

const sizes = (process.env.BATCH_SIZES ?? "20,200").split(",").map(Number);
const kindsEach = 12;
const bin = new URL("../apps/cli/bin/keepwright.js", import.meta.url).pathname;

/** Most memory a process has held so far [MB]; undefined where the system does not tell. */
function mostMemory(id) {
  try {
    // A process that has just ended still has its file, without this line.
    const [, kilobytes] = /VmHWM:\s+(\d+)/.exec(readFileSync(`/proc/${id}/status`, "utf8")) ?? [];
    return kilobytes && Number(kilobytes) / 1024;
  } catch {
    return undefined;
  }
}

/** A tick of processor time in /proc, as Linux fixes it for programs [s]. */
const tick = 1 / 100;

/** Processor time a process with all its threads has taken so far [s]; undefined where the system does not tell. */
function processorTime(id) {
  try {
    const [user, system] = readFileSync(`/proc/${id}/stat`, "utf8").split(") ")[1].split(" ").slice(11, 13);
    return (Number(user) + Number(system)) * tick;
  } catch {
    return undefined;
  }
}

async function measured(count) {
  const folder = mkdtempSync(join(tmpdir(), "keepwright-bench-"));
  const rows = join(folder, "rows.ndjson");
  writeFileSync(
    rows,
    boxes(count, kindsEach)
      .map((row) => JSON.stringify(row))
      .join("\n"),
  );
  const began = performance.now();
  const words = [bin, "batch", rows, "--sheets", join(folder, "sheets"), "--from", "2026-06-13"];
  const child = spawn(process.execPath, words, { stdio: "ignore" });
  let memory;
  let processor;
  const watch = setInterval(() => {
    memory = mostMemory(child.pid) ?? memory;
    processor = processorTime(child.pid) ?? processor;
  }, 100);
  await new Promise((resolve) => child.once("exit", resolve));
  clearInterval(watch);
  const seconds = (performance.now() - began) / 1000;
  rmSync(folder, { recursive: true });
  return { seconds, memory, processor };
}

const results = [];
for (const count of sizes) {
  const { seconds, memory, processor } = await measured(count);
  results.push({ count, seconds, processor });
  const [first] = results;
  console.log(
    JSON.stringify({
      bench: "batch",
      boxes: count,
      kindsEach,
      processors: availableParallelism(),
      load: Number(loadavg()[0].toFixed(1)),
      seconds: Number(seconds.toFixed(1)),
      perBox: Number((seconds / count).toFixed(3)),
      // Hardly depends on what else the machine does, so that growth can be read from it.
      processorSeconds: processor && Number(processor.toFixed(1)),
      processorPerBox: processor && Number((processor / count).toFixed(3)),
      megabytes: memory && Math.round(memory),
      boxesToFirst: count / first.count,
      timeToFirst: Number((seconds / first.seconds).toFixed(2)),
    }),
  );
}
