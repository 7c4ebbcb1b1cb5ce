import { useId, useRef, useState } from "react";
import { useDesk } from "../../behaviour/desk.js";
import { today } from "../../state/today.js";
import { workedExample } from "../../state/workedExample.js";
import { mostBytes, type OpenedFile, readKeptFile } from "../../storage/keptFile.js";
import { keptFileText } from "../../storage/keptFileText.js";
import { useSettingsWords } from "../../words/settingsWords.js";
import { ReplaceQuestion } from "./ReplaceQuestion.js";
import { saveFile } from "./saveFile.js";

type Read =
  | OpenedFile
  | { readonly ok: false; readonly fault: "tooLarge" | "unreadable"; readonly size: number };
type Usable = Extract<OpenedFile, { readonly ok: true }>;
const megabyte = 1_000_000;

async function readFile(file: File, kinds: ReadonlySet<string>): Promise<Read> {
  if (file.size > mostBytes) return { ok: false, fault: "tooLarge", size: Math.ceil(file.size / megabyte) };
  try {
    return readKeptFile(await file.text(), { otherwise: workedExample("en"), kinds });
  } catch {
    return { ok: false, fault: "unreadable", size: file.size };
  }
}

/** Everything as one plain file, to take along and to bring back. */
export function SavedFile() {
  const say = useSettingsWords();
  const id = useId();
  const { haul } = useDesk();
  const question = useRef<HTMLDialogElement>(null);
  const [said, setSaid] = useState("");
  const [wrong, setWrong] = useState("");
  const [opened, setOpened] = useState<Usable & { readonly name: string }>();

  const save = () => {
    const name = `keepwright-${today()}.json`;
    saveFile(name, keptFileText(haul.state, new Date()));
    setSaid(say("file.saved", { name }));
  };
  const open = async (file: File) => {
    setSaid("");
    setWrong("");
    const { name } = file;
    const read = await readFile(file, haul.kinds);
    if (read.ok) {
      setOpened({ ...read, name });
      question.current?.showModal();
    } else if (read.fault === "tooLarge") {
      setWrong(say("file.tooLarge", { name, size: read.size, most: mostBytes / megabyte }));
    } else setWrong(say(`file.${read.fault}`, { name }));
  };
  return (
    <section aria-labelledby={`${id}-heading`}>
      <h3 id={`${id}-heading`}>{say("file.heading")}</h3>
      <p>{say("file.about")}</p>
      <div className="fields">
        <button type="button" className="main-button" onClick={save}>
          {say("file.save")}
        </button>
        <FileField wrong={wrong} onChoose={(file) => void open(file)} />
      </div>
      <p role="status">{said}</p>
      <ReplaceQuestion
        dialog={question}
        opened={opened}
        onReplace={(file) => {
          haul.change({ change: "replace", state: file.state, how: "file" });
          setSaid(say("file.opened", { name: file.name }));
        }}
      />
    </section>
  );
}

interface FileFieldProps {
  /** Why the last file was not opened; empty where it was. */
  readonly wrong: string;
  readonly onChoose: (file: File) => void;
}

function FileField({ wrong, onChoose }: FileFieldProps) {
  const say = useSettingsWords();
  const id = useId();
  return (
    <div className="field wide">
      <label htmlFor={id}>{say("file.open")}</label>
      <input
        id={id}
        type="file"
        accept=".json,application/json"
        aria-describedby={wrong ? `${id}-wrong` : undefined}
        aria-invalid={wrong !== ""}
        onChange={(event) => {
          const [file] = event.target.files ?? [];
          if (file) onChoose(file);
          // The same file may be chosen again once it was mended.
          event.target.value = "";
        }}
      />
      <p role="alert" id={`${id}-wrong`} className="wrong">
        {wrong}
      </p>
    </div>
  );
}
