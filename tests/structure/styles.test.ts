import { readdirSync, readFileSync } from "node:fs";
import { join, sep } from "node:path";
import { describe, expect, it } from "vitest";
import { STYLESHEETS } from "../../views/stylesheets.ts";

const ORDER = "@layer tokens, base, parts, pages;";
/** A page's own sheet is of the pages' layer, all others of the parts'; the first two of the shared sheets have one each. */
const layerOf = (file: string): string => /^parts\/(tokens|base)\.css$/.exec(file)?.[1] ?? (file.startsWith("pages/") ? "pages" : "parts");

const sheets = readdirSync("views", { recursive: true, encoding: "utf8" })
  .filter((file) => file.endsWith(".css"))
  .map((file) => file.split(sep).join("/"));

/** What stands at the top of a sheet: statements, and the heads of blocks. */
function topOf(css: string): string[] {
  const bare = css.replaceAll(/\/\*.*?\*\//gs, "");
  const found: string[] = [];
  let depth = 0;
  let head = "";
  for (const letter of bare) {
    if (depth === 0 && (letter === ";" || letter === "{")) {
      found.push(`${head.trim()}${letter === ";" ? ";" : ""}`);
      head = "";
    } else if (depth === 0) head += letter;
    if (letter === "{") depth++;
    if (letter === "}" && --depth === 0) head = "";
  }
  return head.trim() === "" ? found : [...found, head.trim()];
}

describe("style sheets", () => {
  it.each(sheets)("%s has all its rules in its layer, and is short enough to be read", (file) => {
    const css = readFileSync(join("views", file), "utf8");
    const order = file === "parts/tokens.css" ? [ORDER] : [];
    expect(topOf(css)).toEqual([...order, `@layer ${layerOf(file)}`]);
    expect(css.split("\n").length).toBeLessThan(260);
  });

  it("are each worn by a page, after the order of the layers", () => {
    expect(Object.values(STYLESHEETS).every(([first]) => first === "parts/tokens.css")).toBe(true);
    expect([...new Set(Object.values(STYLESHEETS).flat())].sort()).toEqual(sheets.sort());
  });
});
