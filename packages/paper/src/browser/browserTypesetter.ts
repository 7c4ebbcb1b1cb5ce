import begin, { type TypstCompiler, TypstCompilerBuilder } from "@myriaddreamin/typst-ts-web-compiler";
import { lettersOf } from "../setting/lettersOf.js";
import { PaperError } from "../setting/paperError.js";
import {
  fontFiles,
  type PaperInputs,
  type Template,
  type Typeset,
  type Typesetter,
  typstFiles,
} from "../setting/typesetter.js";
import { declarePdfUa } from "./declarePdfUa.js";
import { withoutMakingCode } from "./withoutMakingCode.js";

/** What the typesetter is made of, as it came over the network or from the device. */
export interface TypesetterParts {
  /** The typesetter itself, WebAssembly: its bytes, or an answer that carries them. */
  readonly program: Uint8Array | Response;
  readonly fonts: Readonly<Record<(typeof fontFiles)[number], Uint8Array>>;
  /** What pages are set from, as text. */
  readonly templates: Readonly<Record<(typeof typstFiles)[number], string>>;
}

/** Kinds of document and of export, and how diagnostics come, by the numbers of the binding. */
const paged = 0;
const pdf = 1;
const asObjects = 3;

const folder = "/typst/";

interface Diagnostics {
  readonly diagnostics: readonly { readonly message: string }[];
}

/** Sets a page; errors and warnings are both of them faults. */
function set(compiler: TypstCompiler, template: Template, inputs: PaperInputs): Typeset {
  // What was worked out for earlier pages is forgotten, the last ones aside.
  compiler.reset();
  const world = compiler.snapshot(undefined, folder + template, Object.entries(inputs));
  const { diagnostics } = world.compile(paged, asObjects) as Diagnostics;
  if (diagnostics.length > 0) {
    const told = diagnostics.map(({ message }) => message).join("; ");
    throw new PaperError(`The page cannot be set: ${told}`);
  }
  const [pages] = JSON.parse(world.query(paged, "<page-count>", "value")) as [number];
  return {
    pages,
    pdf() {
      const { result } = world.get_artifact(pdf, asObjects) as { result?: Uint8Array };
      if (!result) throw new PaperError("The page cannot be written as PDF.");
      return declarePdfUa(result);
    },
  };
}

/** The typesetter for browsers: the same as Node's, as WebAssembly. Throws PaperError where it cannot be begun. */
export async function browserTypesetter({ program, fonts, templates }: TypesetterParts): Promise<Typesetter> {
  try {
    await begin({ module_or_path: program });
    const builder = withoutMakingCode(() => new TypstCompilerBuilder());
    for (const name of fontFiles) await builder.add_raw_font(fonts[name]);
    const compiler = await builder.build();
    for (const name of typstFiles)
      compiler.map_shadow(folder + name, new TextEncoder().encode(templates[name]));
    const letters = lettersOf(fonts["Andika-Regular.ttf"], fonts["Andika-Bold.ttf"]);
    return { letters, set: (template, inputs) => set(compiler, template, inputs) };
  } catch (error) {
    throw new PaperError(
      `The typesetter cannot be begun: ${error instanceof Error ? error.message : String(error)}`,
    );
  }
}
