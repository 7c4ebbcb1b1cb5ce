import type { Catalogue } from "@keepwright/catalogue";
import {
  type ClassDocument,
  type ClassKit,
  type KitRecord,
  type RecordedDocument,
  sourceStandings,
} from "@keepwright/handout";
import { version } from "../version.js";
import { catalogueDigest, digestOf, itemDigest } from "./digests.js";
import { fileOf, printedDocument } from "./kitPdfs.js";
import { slidesFile, slidesOf } from "./kitSlides.js";
import { twoWaysOf } from "./kitTwoWays.js";

/** A kit with its files, as bytes, and the record of what went into it. */
export interface PrintedKit {
  readonly kit: ClassKit;
  readonly record: KitRecord;
  readonly files: ReadonlyMap<string, Uint8Array>;
}

const standings = ({ blocks, sources }: ClassDocument): RecordedDocument["sources"] => {
  const all = [...sources, ...blocks.flatMap((block) => (block.block === "sources" ? block.sources : []))];
  const count = (standing: string) => all.filter((one) => one.standing === standing).length;
  return Object.fromEntries(sourceStandings.map((standing) => [standing, count(standing)])) as Record<
    (typeof sourceStandings)[number],
    number
  >;
};

/** Sets every document; its bytes go to `files`. */
const printedDocuments = (kit: ClassKit, files: Map<string, Uint8Array>): RecordedDocument[] =>
  kit.documents.map((document): RecordedDocument => {
    const { bytes, pages } = printedDocument(kit, document);
    const file = fileOf(document);
    files.set(file, bytes);
    const { id, sort, reader, title, items } = document;
    const content = digestOf(document);
    return {
      id,
      sort,
      reader,
      title,
      file,
      pages,
      items,
      sources: standings(document),
      content,
      fileDigest: digestOf(bytes),
    };
  });

/** Sets every document, makes the slides and the comparison, and records what went into the kit. Throws UserError for a character that cannot be printed. */
export async function printedKit(made: ClassKit, catalogue: Catalogue): Promise<PrintedKit> {
  const { kit, bytes: slides } = await slidesOf(made, catalogue);
  const files = new Map<string, Uint8Array>();
  const documents = printedDocuments(kit, files);
  const others = new Map([...twoWaysOf(kit, catalogue), [slidesFile, slides]]);
  for (const [file, bytes] of others) files.set(file, bytes);
  const record: KitRecord = {
    version: 1,
    program: version(),
    title: kit.title,
    language: kit.request.audience.language,
    seed: kit.request.seed,
    request: kit.request,
    catalogue: { digest: catalogueDigest(catalogue), kinds: catalogue.commodities.size },
    items: kit.items.map(({ id, name }) => ({ id, name, digest: itemDigest(catalogue, id) })),
    documents,
    otherFiles: [...others].map(([file, bytes]) => ({ file, fileDigest: digestOf(bytes) })),
  };
  return { kit, record, files };
}
