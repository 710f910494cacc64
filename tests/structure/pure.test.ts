import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";

const files = readdirSync("machines", { recursive: true, encoding: "utf8" }).filter((f) => /\.tsx?$/.test(f));

describe("machines/ knows nothing of where it runs", () => {
  it.each(files)("%s", (file) => {
    const source = readFileSync(join("machines", file), "utf8");
    const imports = [...source.matchAll(/(?:from|import)\s*\(?\s*"([^"]+)"/g)].map((m) => m[1]!);
    const outside = imports.filter(
      (i) =>
        !i.startsWith(".") &&
        !["xstate", "canonicalize", "geographiclib-geodesic", "ml-matrix", "temporal-polyfill", "ts-fsrs", "valibot"].includes(i) &&
        !i.startsWith("@noble/hashes/") &&
        !i.startsWith("pure-rand/"),
    );
    expect(outside).toEqual([]);
    expect(imports.filter((i) => /(^|\/)(server|views)\//.test(i))).toEqual([]);
    // A file of ours may be called document.ts.
    const code = source.replaceAll(/from "[^"]+"/g, "");
    expect(code.match(/\bDate\.now\b|\bnew Date\b|Math\.random|(?<![.\w])(?:document|window|globalThis|process)\.[a-z]/g)).toBeNull();
  });
});
