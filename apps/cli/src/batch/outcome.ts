import { plainText } from "@keepwright/handout";
import { type Finding, InputError, told } from "@keepwright/planner";
import { unprintable } from "../output/unprintable.js";
import { UserError } from "../userError.js";

/** What became of one line of a batch. */
export type RowOutcome =
  | {
      readonly line: number;
      readonly id: string;
      readonly outcome: "made";
      readonly pages: number;
      readonly lots: number;
      readonly questions: readonly string[];
    }
  | {
      readonly line: number;
      readonly id: string;
      readonly outcome: "kept";
      readonly partly: boolean;
    }
  | {
      readonly line: number;
      readonly id: string;
      readonly outcome: "failed";
      readonly problems: readonly Finding[];
    };

/** What went wrong with a row, as something that can be put right; a fault of the program is told as one, and the rest goes on. */
export function problemsOf(error: unknown): readonly Finding[] {
  if (error instanceof UserError || error instanceof InputError) return error.findings;
  const unprinted = unprintable("row", error);
  if (unprinted) return [unprinted];
  const code = (error as NodeJS.ErrnoException | undefined)?.code;
  if (code !== undefined && /^E[A-Z]+$/.test(code)) {
    return [
      {
        thing: "row",
        value: `its files cannot be written (${code})`,
        remedy: "Check the folder and the room on the disk, and give the same command again",
        ...told("row files not written", { fault: code }),
      },
    ];
  }
  const { name, message } = error instanceof Error ? error : { name: "Error", message: String(error) };
  return [
    {
      thing: "row",
      value: plainText(`${name}: ${message}`),
      remedy: "This is a fault of keepwright itself, not yours: the other rows are done all the same",
    },
  ];
}
