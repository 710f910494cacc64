import type { Expected } from "../../install/checks/expected.ts";
import type { Value } from "../../install/checks/registry.ts";
import type { Gate } from "../../install/gates.ts";
import type { Step } from "../../install/step.ts";
import type { Meaning } from "../meanings.ts";

/** A step with a gate that is waiting for an answer. */
export type Asked = Step & { readonly gate: Gate };

/** Parses everything that was said as one kind of answer, or tells why it is not one. */
export type AnswerParser<K extends Expected["expects"]> = (
  said: string,
  expected: Extract<Expected, { expects: K }>,
  step: Asked,
) => Value | Meaning;
