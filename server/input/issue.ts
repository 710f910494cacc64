import type * as v from "valibot";
import type { Words } from "../../views/text/words.ts";
import type { Sentence } from "./problem.ts";

type Issue = v.BaseIssue<unknown>;
type Errors = Words["errors"];
/** The values that an error's sentence is made with. */
type ValuesOf<Code extends keyof Errors> = Errors[Code] extends (...values: infer Values) => string ? Values : [];

/** The library's messages are texts; ours wait for a language, each beside the issue that it was made for. */
const sentences = new WeakMap<Issue, Sentence>();

/** The message of a schema: a sentence on the value that was given. */
export const saysOf =
  (sentence: (words: Words, given: unknown) => string) =>
  (issue: Issue): string => {
    sentences.set(issue, (words) => sentence(words, issue.input));
    return "";
  };

/** The message of a schema by its name among the errors, with its values: `says("tooLong", 80)`. */
export const says = <Code extends keyof Errors>(code: Code, ...values: ValuesOf<Code>) =>
  saysOf(({ errors }) => {
    const said = errors[code] as string | ((...values: unknown[]) => string);
    return typeof said === "string" ? said : said(...values);
  });

/** What a schema of ours says of a value; `null` where only the library's own rule was broken. */
export const saidOf = (issue: Issue): Sentence | null => sentences.get(issue) ?? null;

/** What is wrong where no schema of ours says so: nothing was given, or something of another type. */
export const wrongKindOf = ({ input, received }: Issue): Sentence =>
  received === "undefined" ? (words) => words.errors.missing : (words) => words.errors.wrongKind(input);
