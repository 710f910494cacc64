import { readFileSync } from "node:fs";

/** One way to say something at a call of the demo job, and what a crew lead means by it there. `means` begins with its kind. */
export type Saying = {
  readonly file: string;
  readonly at: string;
  /** With the talk button held, or with a read-back waiting too, or into an open microphone. */
  readonly how: "talk" | "read back" | "open";
  readonly means: string;
  readonly said: string;
};

const SECTION = /^@ ([^,]+)(?:, (read back|open))?$/;
const LINE = /^([a-zA-Z][^:]*): (.+)$/;

/** The sayings of a file of the corpus. Throws where a line is neither a section, a meaning with its sayings, nor a comment. */
export function corpus(file: string): Saying[] {
  const text = readFileSync(new URL(`../speech/corpus/${file}`, import.meta.url), "utf8");
  let at: Pick<Saying, "at" | "how"> | null = null;
  return text.split("\n").flatMap((line, i) => {
    if (line.trim() === "" || line.startsWith("#")) return [];
    const section = SECTION.exec(line);
    if (section) {
      at = { at: section[1]!, how: (section[2] as Saying["how"] | undefined) ?? "talk" };
      return [];
    }
    const found = LINE.exec(line);
    if (!found || !at) throw new Error(`${file}:${i + 1}: neither a section nor a meaning: ${line}`);
    const [, means = "", sayings = ""] = found;
    return sayings.split(" | ").map((said): Saying => ({ file, ...at!, means, said: said.trim() }));
  });
}
