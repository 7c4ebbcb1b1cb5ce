import { readFileSync } from "node:fs";
import { builtinModules } from "node:module";
import { posix } from "node:path";
import { describe, expect, it } from "vitest";
import { importsOf, root, sourceFiles } from "./sourceFiles.js";

/** Rooms from left to right: a room may use any room to its left. Apps use every room, never one another. */
const rooms = ["quantities", "catalogue", "physics", "planner", "handout", "paper"];
const apps = ["cli", "web"];
/** Of rooms that need Node for a part of what they do, the doors that the page in a browser may go in by. */
const browserDoors: Record<string, readonly string[]> = {
  paper: ["@keepwright/paper/browser", "@keepwright/paper/typst", "@keepwright/paper/fonts"],
};
/** Within paper, what each folder may use beside its own files: what finds the setting is pure, and both typesetters are thin beside it. */
const withinPaper: Record<string, readonly string[]> = {
  setting: ["@keepwright/handout"],
  browser: ["../setting/", "@myriaddreamin/typst-ts-web-compiler"],
  node: ["../setting/", "@keepwright/handout", "@myriaddreamin/typst-ts-node-compiler", "node:"],
  slides: ["../setting/paperError.js", "@keepwright/handout", "jszip", "node:", "pptxgenjs"],
};
/** Rooms that must stay pure run unchanged in Node, a worker and the browser: no module but these may be imported. */
const outside: Record<string, readonly string[]> = {
  quantities: [],
  catalogue: ["zod"],
  physics: [],
  // The solver stands behind the proof alone, and is loaded when it is first asked for.
  planner: ["highs", "zod"],
  handout: ["intl-messageformat"],
  paper: [
    "@myriaddreamin/typst-ts-node-compiler",
    "@myriaddreamin/typst-ts-web-compiler",
    "jszip",
    "node:fs",
    "node:module",
    "node:url",
    "pptxgenjs",
  ],
};

const folderOf = (path: string): string => path.split("/").slice(0, 2).join("/");
const allowedRooms = (folder: string): string[] => {
  const name = folder.split("/")[1] ?? "";
  const index = rooms.indexOf(name);
  const left = index < 0 ? rooms : rooms.slice(0, index);
  return left.flatMap((room) => (name === "web" && browserDoors[room]) || [`@keepwright/${room}`]);
};
/** A file that the page takes as it is, by the door it lies behind. */
const doorOf = (name: string): string =>
  name.startsWith("@keepwright/paper/") ? name.split("/").slice(0, 3).join("/") : name;

const files = sourceFiles(
  [...rooms.map((room) => `packages/${room}/src`), ...apps.map((app) => `apps/${app}/src`)],
  /\.tsx?$/,
);

describe("dependencies point one way", () => {
  it("reads every room", () => {
    const seen = new Set(files.map((file) => folderOf(file.path)));
    expect([...seen].sort()).toEqual(
      [...rooms.map((room) => `packages/${room}`), ...apps.map((app) => `apps/${app}`)].sort(),
    );
  });

  it.each(files.map((file) => [file.path, file] as const))("%s", (_, file) => {
    const folder = folderOf(file.path);
    for (const name of importsOf(file)) {
      if (name.startsWith(".")) {
        const target = posix.normalize(posix.join(posix.dirname(file.path), name));
        expect(folderOf(target), `${file.path} reaches into another room by “${name}”`).toBe(folder);
      } else if (name.startsWith("@keepwright/")) {
        expect(allowedRooms(folder), `${file.path} imports “${name}”, which is not to its left`).toContain(
          doorOf(name),
        );
      } else if (folder.startsWith("packages/")) {
        const room = folder.split("/")[1] ?? "";
        expect(outside[room], `${file.path} imports “${name}”, which this room may not use`).toContain(name);
      }
    }
  });

  it.each(rooms)("the declared dependencies of %s are those to its left", (room) => {
    const declared =
      JSON.parse(readFileSync(`${root}/packages/${room}/package.json`, "utf8")).dependencies ?? {};
    const wrong = Object.keys(declared).filter(
      (name) => !allowedRooms(`packages/${room}`).includes(name) && !outside[room]?.includes(name),
    );
    expect(wrong).toEqual([]);
  });
});

describe("the room of paper", () => {
  const own = files.filter(({ path }) => /^packages\/paper\/src\/.+\//.test(path));
  it.each(own.map((file) => [file.path, file] as const))("%s uses what its folder may", (path, file) => {
    const allowed = ["./", ...(withinPaper[path.split("/")[3]!] ?? [])];
    const wrong = importsOf(file).filter((name) => !allowed.some((start) => name.startsWith(start)));
    expect(wrong).toEqual([]);
  });

  it("is open to the page by the doors that need no Node alone", () => {
    const allowed = allowedRooms("apps/web");
    expect(allowed).toContain("@keepwright/paper/browser");
    expect(allowed).not.toContain("@keepwright/paper");
  });
});

describe("apps declare what they import", () => {
  it.each(apps)("%s", (app) => {
    const { dependencies } = JSON.parse(readFileSync(`${root}/apps/${app}/package.json`, "utf8"));
    const bare = files
      .filter((file) => file.path.startsWith(`apps/${app}/`))
      .flatMap(importsOf)
      .filter((name) => !name.startsWith(".") && !name.startsWith("node:") && !name.startsWith("virtual:"))
      .map((name) =>
        name
          .split("/")
          .slice(0, name.startsWith("@") ? 2 : 1)
          .join("/"),
      );
    expect([...new Set(bare)].filter((name) => !Object.hasOwn(dependencies, name))).toEqual([]);
  });
});

describe("physics and planner are pure", () => {
  const pure = files.filter((file) =>
    /packages\/(quantities|catalogue|physics|planner|handout|paper\/src\/setting)\//.test(file.path),
  );
  const clocks =
    /\bDate\.now\b|\bnew Date\(\)|\bMath\.random\b|\bperformance\.now\b|\bfetch\(|\bdocument\.(?!typ\b)|\bwindow\.|\blocalStorage\b|\bprocess\./;
  it.each(pure.map((file) => [file.path, file] as const))(
    "%s uses no clock, chance, network or page",
    (_, file) => {
      const code = file.text.replaceAll(/\/\*[\s\S]*?\*\/|\/\/.*$/gm, "");
      expect(clocks.exec(code)?.[0]).toBeUndefined();
      expect(
        importsOf(file).filter((name) => name.startsWith("node:") || builtinModules.includes(name)),
      ).toEqual([]);
    },
  );
});
