import type { Expected } from "../../install/checks/expected.ts";
import type { Value } from "../../install/checks/registry.ts";
import type { Asked } from "../listening.ts";
import type { Meaning } from "../meanings.ts";

/** Parses everything that was said as one kind of answer, or tells why it is not one. */
export type AnswerParser<K extends Expected["expects"]> = (
  said: string,
  expected: Extract<Expected, { expects: K }>,
  asked: Asked,
) => Value | Meaning;
