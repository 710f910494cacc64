import type { Expected } from "../../install/checks/expected.ts";
import type { Value } from "../../install/checks/registry.ts";
import type { Gate } from "../../install/gates.ts";
import type { Step } from "../../install/step.ts";
import type { Meaning } from "../meanings.ts";

/** A step whose gate is asked. */
export type Asked = Step & { readonly gate: Gate };

/** Reads the whole of what was said as an answer of one kind; or says why it is none. */
export type AnswerParser<K extends Expected["expects"]> = (
  said: string,
  expected: Extract<Expected, { expects: K }>,
  step: Asked,
) => Value | Meaning;
