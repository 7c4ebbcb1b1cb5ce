import { readFileSync } from "node:fs";
import { builtinModules } from "node:module";
import { posix } from "node:path";
import { describe, expect, it } from "vitest";
import { importsOf, root, sourceFiles } from "./sourceFiles.js";

/** Rooms from left to right: a room may use any room to its left. Apps use every room, never one another. */
const rooms = ["quantities", "catalogue", "physics", "planner", "handout", "paper"];
const apps = ["cli", "web"];
/** Rooms that need Node and a native module: nothing that runs in a browser may use them. */
const nodeOnly = ["paper"];
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
  const allowed = name === "web" ? left.filter((room) => !nodeOnly.includes(room)) : left;
  return allowed.map((room) => `@keepwright/${room}`);
};

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
          name,
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

describe("the page for a browser", () => {
  it("declares no room that needs Node, so that no typesetter gets into its bundle", () => {
    const { dependencies } = JSON.parse(readFileSync(`${root}/apps/web/package.json`, "utf8"));
    const allowed = allowedRooms("apps/web");
    const own = Object.keys(dependencies).filter((name) => name.startsWith("@keepwright/"));
    expect(own.filter((name) => !allowed.includes(name))).toEqual([]);
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
    /packages\/(quantities|catalogue|physics|planner|handout)\//.test(file.path),
  );
  const clocks =
    /\bDate\.now\b|\bnew Date\(\)|\bMath\.random\b|\bperformance\.now\b|\bfetch\(|\bdocument\.|\bwindow\.|\blocalStorage\b|\bprocess\./;
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
