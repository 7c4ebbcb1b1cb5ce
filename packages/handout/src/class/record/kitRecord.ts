import type { LanguageName } from "../../words/languages.js";
import type { ClassDocument, DocumentSort, SourceStanding } from "../classKit.js";
import type { ClassRequest } from "../classRequest.js";

/** A document as it went into a kit. */
export interface RecordedDocument {
  readonly id: string;
  readonly sort: DocumentSort;
  readonly reader: ClassDocument["reader"];
  readonly title: string;
  readonly file: string;
  readonly pages: number;
  readonly items: readonly string[];
  /** How many of its sources stand how. */
  readonly sources: Readonly<Record<SourceStanding, number>>;
  /** SHA-256 of what it says, as data; and of its file. */
  readonly content: string;
  readonly fileDigest: string;
}

/** What went into a kit: enough to make it again, and to tell whether it would come out the same. */
export interface KitRecord {
  readonly version: 1;
  /** Version of the program. */
  readonly program: string;
  readonly title: string;
  readonly language: LanguageName;
  readonly seed: number;
  readonly request: ClassRequest;
  /** SHA-256 of the whole catalogue with guidance and provenance, and how many kinds it has. */
  readonly catalogue: { readonly digest: string; readonly kinds: number };
  /** The kinds, each with the SHA-256 of all the catalogue says of it. */
  readonly items: readonly { readonly id: string; readonly name: string; readonly digest: string }[];
  readonly documents: readonly RecordedDocument[];
  /** Files that are no document on paper: slides, and the comparison as data and as text. */
  readonly otherFiles: readonly { readonly file: string; readonly fileDigest: string }[];
}

/** A kit's record with the documents themselves, to compare with another. */
export interface RecordedKit {
  readonly record: KitRecord;
  readonly documents: readonly ClassDocument[];
}
