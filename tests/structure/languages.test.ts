import { readdirSync, readFileSync } from "node:fs";
import { join, sep } from "node:path";
import { describe, expect, it } from "vitest";

const filesIn = (root: string, kind: RegExp) =>
  readdirSync(root, { recursive: true, encoding: "utf8" })
    .filter((file) => kind.test(file))
    .map((file) => join(root, file).split(sep).join("/"));

/** Where languages are named: the list of them for the server, and what of them the browser needs. */
const REGISTRIES = ["views/text/languages.ts", "views/text/words.ts", "views/voice/languages.ts"];

describe("no part of the program knows which language it speaks", () => {
  const sources = [...filesIn("views", /\.tsx?$/), ...filesIn("server", /\.tsx?$/)].filter(
    (file) => !/^views\/text\/[a-z]+\//.test(file) && !REGISTRIES.includes(file),
  );
  it.each(sources)("%s imports none", (file) => {
    const imports = [...readFileSync(file, "utf8").matchAll(/(?:from|import)\s*\(?\s*"([^"]+)"/g)].map((m) => m[1]!);
    expect(imports.filter((other) => /(^|\/)text\/[a-z]+\//.test(other))).toEqual([]);
  });
  it.each(sources)("%s names no locale", (file) => {
    expect(readFileSync(file, "utf8").match(/new Intl\.\w+Format\("[a-z]{2}-[A-Z]{2}"|toLocale\w*String\(/)).toBeNull();
  });
  it.each(filesIn("views", /\.css$/))("%s writes no words of its own", (file) => {
    const written = [...readFileSync(file, "utf8").matchAll(/content:\s*"([^"]*)"/g)].map((m) => m[1]!);
    expect(written.filter((text) => /\p{L}/u.test(text.replaceAll(/\\[\da-f]+ ?/gi, "")))).toEqual([]);
  });
});
