import { describe, expect, it } from "vitest";
import { sourceFiles } from "./sourceFiles.js";

describe("documents", () => {
  const pages = sourceFiles(["docs"], /\.md$/).concat(sourceFiles(["."], /^[A-Za-z]+\.md$/));
  const paths = new Set(sourceFiles(["."], /.*/).map((file) => file.path));

  it.each(pages.map((page) => [page.path, page] as const))("every link in %s leads somewhere", (_, page) => {
    const links = [...page.text.matchAll(/\]\(([^)#\s]+)(?:#[^)]*)?\)/g)].map((match) => match[1] ?? "");
    const folder = page.path.split("/").slice(0, -1);
    const dead = links
      .filter((link) => !/^https?:/.test(link))
      .filter((link) => {
        const parts = [...folder];
        for (const part of link.split("/")) {
          if (part === "..") parts.pop();
          else if (part !== "." && part !== "") parts.push(part);
        }
        const target = parts.join("/");
        return (
          !paths.has(target) && ![...paths].some((path) => path.startsWith(target === "" ? "" : `${target}/`))
        );
      });
    expect(dead).toEqual([]);
  });
});
