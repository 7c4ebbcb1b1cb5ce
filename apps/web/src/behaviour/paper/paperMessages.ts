import type { ClassDocument, LabelRow, LabelSheet, Message, SheetView } from "@keepwright/handout";
import type { KitPages, PaperSize } from "@keepwright/paper/browser";

/** What is to be set on paper. */
export type PaperAsked =
  | {
      readonly sort: "sheet";
      readonly view: SheetView;
      readonly paper: PaperSize;
      readonly large: boolean;
      /** The line at a page's foot, with {page} and {pages}: the worker has no words of its own. */
      readonly foot: Message;
    }
  | {
      readonly sort: "labels";
      readonly rows: readonly LabelRow[];
      readonly grid: LabelSheet;
      readonly start: number;
      readonly outlines: boolean;
      readonly title: string;
      /** BCP 47 tag. */
      readonly language: string;
    }
  | { readonly sort: "document"; readonly document: ClassDocument; readonly kit: KitPages };

/** To the worker: what to set, and where the typesetter and its fonts are to be had. `number` tells a late answer from the one that is wanted. */
export interface PaperQuestion {
  readonly number: number;
  readonly asked: PaperAsked;
  readonly files: Readonly<Record<"program" | "Andika-Regular.ttf" | "Andika-Bold.ttf", string>>;
}

export type PaperAnswer = { readonly number: number } & (
  | { readonly kind: "set"; readonly bytes: Uint8Array<ArrayBuffer>; readonly pages: number }
  /** The typesetter is not on the device, and there is no network. */
  | { readonly kind: "unreachable" }
  | { readonly kind: "unprintable"; readonly characters: readonly string[] }
  | { readonly kind: "wrong"; readonly message: string }
);
