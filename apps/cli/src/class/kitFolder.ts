import { join } from "node:path";
import {
  type ClassDocument,
  jsonText,
  type KitChanges,
  type KitRecord,
  type RecordedKit,
} from "@keepwright/handout";
import { type Finding, schemaFindings } from "@keepwright/planner";
import type { Door } from "../door/door.js";
import { readJsonFile } from "../door/readText.js";
import { kitDocumentsSchema, kitRecordSchema } from "../output/classSchemas.js";
import { quoted, UserError, userError } from "../userError.js";
import { digestOf } from "./digests.js";
import type { PrintedKit } from "./printedKit.js";

/** Names of the files that a kit has beside its documents. */
export const kitFiles = {
  record: "kit.json",
  documents: "documents.json",
  changes: "what-changed.json",
  changesText: "what-changed.txt",
} as const;

const remedy = "Move the folder's files elsewhere, or name another folder.";

/** The kit that was made into a folder before; undefined where there is none. Throws UserError where its record is spoilt. */
export function earlierKit(door: Door, folder: string): RecordedKit | undefined {
  const paths = [kitFiles.record, kitFiles.documents].map((name) => join(folder, name)) as [string, string];
  if (door.look(paths[0]) === "nothing") return undefined;
  const [record, documents] = paths.map((path) => readJsonFile(door, path, "kit file", remedy));
  const read = kitRecordSchema.safeParse(record);
  if (!read.success) throw new UserError(schemaFindings(record, `kit file ${quoted(paths[0])}`, read.error));
  const said = kitDocumentsSchema.safeParse(documents);
  if (!said.success)
    throw new UserError(schemaFindings(documents, `kit file ${quoted(paths[1])}`, said.error));
  return { record: read.data as KitRecord, documents: said.data.documents as ClassDocument[] };
}

/** Whether a file may be written over: it is not there, or is what was written before, or what is to be written. */
function mayReplace(
  door: Door,
  path: string,
  was: string | undefined,
  bytes: Uint8Array | undefined,
): boolean {
  const found = door.look(path);
  if (found === "nothing") return true;
  if (found === "folder") return false;
  const digest = digestOf(door.readFile(path));
  return digest === was || (bytes !== undefined && digest === digestOf(bytes));
}

/** Every file of a kit but those that tell of it. */
const filesOf = (record: KitRecord | undefined) =>
  record ? [...record.documents, ...record.otherFiles] : [];

/** Throws UserError naming every file that would be lost: changed since by somebody, or never part of a kit. */
function refuseLosing(door: Door, folder: string, printed: PrintedKit, earlier: KitRecord | undefined): void {
  const was = new Map(filesOf(earlier).map(({ file, fileDigest }) => [file, fileDigest]));
  const all = [...new Set([...was.keys(), ...printed.files.keys()])];
  const findings = all
    .filter((file) => !mayReplace(door, join(folder, file), was.get(file), printed.files.get(file)))
    .map(
      (file): Finding => ({
        thing: `file ${quoted(join(folder, file))}`,
        value: was.has(file)
          ? "it was changed since the kit was made"
          : "it is there and is no part of a kit",
        remedy: "Move it elsewhere, so that it is not lost, or name another folder.",
      }),
    );
  if (findings.length > 0) throw new UserError(findings);
}

const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text);

export interface WrittenChanges {
  readonly changes: KitChanges;
  readonly text: string;
}

/**
 * Writes a kit into a folder: the documents first, then the record of them, so that a run that was stopped is taken up by the next. Files of documents that
 * are no more in the kit are taken away. Throws UserError where something of the person's would be lost or cannot be written.
 */
export function writeKit(
  door: Door,
  folder: string,
  printed: PrintedKit,
  earlier: RecordedKit | undefined,
  told: WrittenChanges | undefined,
): void {
  refuseLosing(door, folder, printed, earlier?.record);
  const { kit, record, files } = printed;
  try {
    door.makeFolder(folder);
    for (const [file, bytes] of files) door.writeFile(join(folder, file), bytes);
    for (const { file } of filesOf(earlier?.record))
      if (!files.has(file)) door.removeFile(join(folder, file));
    const write = (name: string, text: string) => door.writeFile(join(folder, name), bytesOf(text));
    if (told) {
      write(kitFiles.changes, jsonText(told.changes));
      write(kitFiles.changesText, told.text);
    }
    write(kitFiles.documents, jsonText({ version: 1, documents: kit.documents }));
    write(kitFiles.record, jsonText(record));
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code === undefined) throw error;
    throw userError(
      `--into ${quoted(folder)}`,
      `it cannot be written (${code})`,
      "Check that you may write there.",
    );
  }
}
