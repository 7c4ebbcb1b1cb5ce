import { mkdirSync, readFileSync, rmSync, statSync, writeFileSync, writeSync } from "node:fs";
import type { Door } from "./door.js";
import { showProgress } from "./progress.js";

const standardInput = 0;
const standardOutput = 1;
const standardError = 2;

/** Writes all of it even where a pipe is full; a reader that has gone away ends the printing quietly. */
function writeAll(descriptor: number, text: string): void {
  const bytes = Buffer.from(text, "utf8");
  let at = 0;
  while (at < bytes.length) {
    try {
      at += writeSync(descriptor, bytes, at);
    } catch (error) {
      const { code } = error as NodeJS.ErrnoException;
      if (code === "EPIPE") return;
      if (code !== "EAGAIN") throw error;
      Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 5);
    }
  }
}

const twoDigits = (value: number) => String(value).padStart(2, "0");

function today(): string {
  const now = new Date();
  return `${now.getFullYear()}-${twoDigits(now.getMonth() + 1)}-${twoDigits(now.getDate())}`;
}

function look(path: string): "file" | "folder" | "nothing" {
  try {
    return statSync(path).isDirectory() ? "folder" : "file";
  } catch {
    return "nothing";
  }
}

/** The door to this machine: its files, its streams, its clock. */
export function nodeDoor(): Door {
  return {
    out: (text) => writeAll(standardOutput, text),
    err: (text) => writeAll(standardError, text),
    outIsTerminal: process.stdout.isTTY === true,
    errIsTerminal: process.stderr.isTTY === true,
    look,
    readFile: (path) => readFileSync(path),
    writeFile: (path, bytes) => writeFileSync(path, bytes),
    makeFolder: (path) => {
      mkdirSync(path, { recursive: true });
    },
    removeFile: (path) => rmSync(path, { force: true }),
    readStandardInput: () => readFileSync(standardInput),
    today,
    now: () => `${new Date().toISOString().slice(0, 19)}Z`,
    showProgress,
  };
}
