import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, normalize } from "node:path";
import { describe, expect, it } from "vitest";

const sources = ["machines", "server", "views"].flatMap((root) =>
  readdirSync(root, { recursive: true, encoding: "utf8" })
    .filter((file) => /\.tsx?$/.test(file))
    .map((file) => join(root, file)),
);
/** Every file with the files of ours that it imports, for their types alone or for more. */
const imports = new Map(
  sources.map((file) => {
    const found = readFileSync(file, "utf8").matchAll(/(?:from|import)\s*\(?\s*"(\.[^"]+)"/g);
    return [file, [...found].map((m) => normalize(join(dirname(file), m[1]!)))] as const;
  }),
);

/** The groups of two or more that can each be reached from the others (Tarjan's strongly connected components). */
function circles(graph: ReadonlyMap<string, readonly string[]>): string[][] {
  const order = new Map<string, number>();
  const low = new Map<string, number>();
  const stack: string[] = [];
  const found: string[][] = [];
  const visit = (node: string) => {
    order.set(node, order.size);
    low.set(node, order.get(node)!);
    stack.push(node);
    for (const next of graph.get(node) ?? []) {
      if (!order.has(next)) visit(next);
      if (stack.includes(next)) low.set(node, Math.min(low.get(node)!, low.get(next)!));
    }
    if (low.get(node) !== order.get(node)) return;
    const group = stack.splice(stack.indexOf(node));
    if (group.length > 1) found.push(group.sort());
  };
  for (const node of graph.keys()) if (!order.has(node)) visit(node);
  return found;
}

/** The same graph between the groups that files belong to. */
function between(groupOf: (file: string) => string | null): Map<string, string[]> {
  const graph = new Map<string, Set<string>>();
  for (const [file, used] of imports)
    for (const other of used) {
      const [from, to] = [groupOf(file), groupOf(other)];
      if (from === null || to === null || from === to) continue;
      graph.set(from, (graph.get(from) ?? new Set()).add(to));
    }
  return new Map([...graph].map(([from, to]) => [from, [...to]]));
}

describe("nothing in the program goes in a circle", () => {
  it("finds a circle where there is one", () => {
    expect(circles(new Map([["a", ["b"]], ["b", ["c"]], ["c", ["a", "d"]], ["d", []]]))).toEqual([["a", "b", "c"]]); // biome-ignore format: one line reads best
  });

  it("between files", () => {
    expect(circles(imports)).toEqual([]);
  });

  it("between the folders of machines", () => {
    expect(circles(between((file) => /^machines\/[^/]+/.exec(file)?.[0] ?? null))).toEqual([]);
  });

  it("between machines, views and server, which import one way only", () => {
    const layers = between((file) => file.split("/")[0]!);
    expect(layers.get("machines") ?? []).toEqual([]);
    expect(layers.get("views")).toEqual(["machines"]);
    expect(layers.get("server")?.sort()).toEqual(["machines", "views"]);
  });
});
