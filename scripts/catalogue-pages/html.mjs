const escapes = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" };
const escaped = (text) => String(text).replace(/[&<>"]/g, (sign) => escapes[sign]);

const single = new Set(["meta", "link", "path", "line", "rect"]);
/** Elements that end a line in the file, so that a change shows as a change of lines. */
const endsLine = new Set(
  (
    "html head body title meta link header main footer nav section figure figcaption h1 h2 h3 p ul ol li dl dt dd " +
    "table caption thead tbody tr details summary svg g desc path line rect text div"
  ).split(" "),
);

/** A piece of finished HTML; only `element` makes one, so that no text comes onto a page unescaped. */
class Markup {
  #text;
  constructor(text) {
    this.#text = text;
  }
  toString() {
    return this.#text;
  }
}

function inner(child) {
  if (child === undefined || child === null || child === false) return "";
  if (Array.isArray(child)) return child.map(inner).join("");
  return child instanceof Markup ? child.toString() : escaped(child);
}

/** One element. Children are elements, lists of them, or text, which is escaped; undefined attributes and children are left out. */
export function element(name, attributes, ...children) {
  const given = Object.entries(attributes ?? {})
    .filter(([, value]) => value !== undefined)
    .map(([key, value]) => ` ${key}="${escaped(value)}"`)
    .join("");
  const end = endsLine.has(name) ? "\n" : "";
  return new Markup(
    single.has(name) ? `<${name}${given}/>${end}` : `<${name}${given}>${inner(children)}</${name}>${end}`,
  );
}

/** A whole page of the catalogue as the text of its file. */
export function htmlPage({ title, description }, ...body) {
  const head = element(
    "head",
    {},
    element("meta", { charset: "utf-8" }),
    element("meta", { name: "viewport", content: "width=device-width, initial-scale=1" }),
    element("meta", { name: "description", content: description }),
    element("meta", { name: "color-scheme", content: "light dark" }),
    element("title", {}, title),
    element("link", { rel: "stylesheet", href: "catalogue.css" }),
  );
  return `<!doctype html>\n${element("html", { lang: "en" }, head, element("body", {}, body))}`;
}
