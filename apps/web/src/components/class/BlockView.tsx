import { type ClassDocument, choiceLetters, type MarkedLine } from "@keepwright/handout";
import { MarkedText } from "../MarkedText.js";

type Block = ClassDocument["blocks"][number];
type Of<Name extends Block["block"]> = Extract<Block, { block: Name }>;

/** One piece of a page. What is told by its place alone has no name of its own, so places serve as keys. */
export function BlockView({ block }: { readonly block: Block }) {
  switch (block.block) {
    case "heading":
      return <h4>{block.text}</h4>;
    case "text":
      return <p>{block.text}</p>;
    case "list":
      return <ListView block={block} />;
    case "pairs":
      return (
        <dl className="class-pairs">
          {block.rows.map(({ name, text }) => (
            <div key={name}>
              <dt>{name}</dt>
              <dd>{text}</dd>
            </div>
          ))}
        </dl>
      );
    case "table":
      return <TableView block={block} />;
    case "caution":
      return (
        <div className="class-caution">
          {block.lines.map((line) => (
            <p key={line}>{line}</p>
          ))}
        </div>
      );
    case "cards":
      return <CardsView block={block} />;
    case "choice":
      return <ChoiceView block={block} />;
    case "sources":
      return <SourcesView sources={block.brief ?? block.sources} />;
    case "writing":
      return <div className="class-writing" style={{ height: `${2 * block.lines}em` }} />;
    case "page":
      return <div className="class-new-page" />;
    default:
      return null;
  }
}

function ListView({ block: { mark, items } }: { readonly block: Of<"list"> }) {
  const lines = items.map((item) => <li key={item}>{item}</li>);
  if (mark === "number") return <ol>{lines}</ol>;
  return <ul className={mark === "tick" ? "class-ticks" : undefined}>{lines}</ul>;
}

function TableView({ block: { head, rows } }: { readonly block: Of<"table"> }) {
  return (
    <table className="class-table">
      <thead>
        <tr>
          {head.map((word) => (
            <th key={word} scope="col">
              {word}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map(([name, ...others], row) => (
          <tr key={row}>
            <th scope="row">{name}</th>
            {others.map((word, column) => (
              <td key={column}>{word}</td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function CardsView({ block: { cards } }: { readonly block: Of<"cards"> }) {
  return (
    <div className="class-cards">
      {cards.map(({ front, back }, index) => (
        <div key={index} className="class-card">
          {[front, back].map(({ title, lines }, face) => (
            <div key={face}>
              <p className="class-card-title">{title}</p>
              {lines.map((line) => (
                <p key={line}>{line}</p>
              ))}
            </div>
          ))}
        </div>
      ))}
    </div>
  );
}

function ChoiceView({ block }: { readonly block: Of<"choice"> }) {
  const { number, question, choices, answer, right, why } = block;
  return (
    <div className="class-choice">
      <p>
        <strong>
          {number}. {question}
        </strong>
      </p>
      <ul>
        {choices.map((choice, index) => (
          <li key={choice}>
            {index === answer ? <strong>{right ?? choice}</strong> : `${choiceLetters[index]}. ${choice}`}
          </li>
        ))}
      </ul>
      {why !== undefined && <p>{why}</p>}
    </div>
  );
}

/** Where something comes from, in small letters. */
export function SourcesView({ sources }: { readonly sources: readonly MarkedLine[] }) {
  return (
    <ul className="class-sources">
      {sources.map((line) => (
        <li key={line.text}>
          <MarkedText line={line} />
        </li>
      ))}
    </ul>
  );
}
