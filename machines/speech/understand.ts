import type { Ask } from "../install/commands.ts";
import type { Gate, Value } from "../install/gates.ts";
import { inUnit, readNumber, type Wants } from "./numbers.ts";

export type Question = "again" | "why" | "whatsLeft" | "howMany" | "where";
/** A command without what the server adds; a question, which is answered and not recorded; or why it was neither. */
export type Understood =
  | { readonly ask: Exclude<Ask, { type: "amend" | "agree" | "disagree" | "reading" }> }
  | { readonly wind: { readonly mph: number; readonly gustMph: number | null } }
  | { readonly thunder: true }
  | { readonly question: Question; readonly about: string }
  | { readonly wrongUnit: { readonly gave: string; readonly wants: string } }
  | { readonly notUnderstood: true };

const FIXED: readonly (readonly [RegExp, Understood])[] = [
  [/^(?:hold|stop|freeze|everybody stop|hold everything|get out|look out)$/, { ask: { type: "hold" } }],
  [/^(?:next|done next|next one|next call)$/, { ask: { type: "next" } }],
  [/^(?:back|back one|go back)$/, { ask: { type: "back" } }],
  [/^(?:carry on|go on)$/, { ask: { type: "carryOn" } }],
  [/^(?:again|say again|say it again|where am i)$/, { question: "again", about: "" }],
  [/^why$/, { question: "why", about: "" }],
  [/^what'?s left$/, { question: "whatsLeft", about: "" }],
  [/^thunder(?: heard)?$/, { thunder: true }],
];
const WITH_TEXT: readonly (readonly [RegExp, (text: string) => Understood])[] = [
  [/^make safe\b[ ,:-]*(.*)$/is, (text) => ({ ask: { type: "makeSafe", because: text || "said" } })],
  [/^stand down (?:because|since) (.+)$/is, (text) => ({ ask: { type: "standDown", because: text } })],
  [/^note\b[ ,:-]*(.+)$/is, (text) => ({ ask: { type: "note", text } })],
  [/^(how many .+)$/is, (about) => ({ question: "howMany", about })],
  [/^(where\b.*)$/is, (about) => ({ question: "where", about })],
];

/** What typed words ask for, given the gate that is asked. Pure; the same words at another gate mean something else. */
export function understand(heard: string, gate: Gate | null): Understood {
  const said = heard.trim();
  const plain = said
    .toLowerCase()
    .replaceAll(/[.,!?;]+(?=\s|$)/g, "")
    .replaceAll(/\s+/g, " ");
  const fixed = FIXED.find(([words]) => words.test(plain));
  if (fixed) return fixed[1];
  const wind = /^(?:wind )?(.+?)(?: mph| miles an hour)? gusting (.+?)(?: mph| miles an hour)?$/.exec(plain) ?? /^wind (.+)$/.exec(plain);
  if (wind) return windSaid(wind[1]!, wind[2] ?? null);
  for (const [words, make] of WITH_TEXT) {
    const found = words.exec(said);
    if (found) return make((found[1] ?? "").trim());
  }
  const waive = /^(?:waive|leave it) (?:because|since) (.+)$/is.exec(said);
  if (waive && gate) return { ask: { type: "waive", gate: gate.id, because: waive[1]!.trim() } };
  return gate ? answerSaid(plain, said, gate) : { notUnderstood: true };
}

function windSaid(mean: string, gust: string | null): Understood {
  const numbers = [mean, gust].map((t) => (t === null ? null : readNumber(t)));
  if (numbers.some((n, i) => n === null && [mean, gust][i] !== null)) return { notUnderstood: true };
  const mph = numbers.map((n) => (n ? inUnit(n, "mph") : null));
  if (numbers[0] && mph[0] === null) return { wrongUnit: { gave: numbers[0].unit ?? "", wants: "mph" } };
  return { wind: { mph: mph[0]!, gustMph: mph[1] ?? null } };
}

function answerSaid(plain: string, said: string, gate: Gate): Understood {
  const answer = (value: Value): Understood => ({ ask: { type: "answer", gate: gate.id, value } });
  if (/^(?:don'?t know|unknown|not sure)$/.test(plain)) return answer({ kind: "unknown" });
  const { asks } = gate;
  switch (asks.kind) {
    case "yesNo":
      if (/^(?:yes|yeah|yep|done yes)$/.test(plain)) return answer({ kind: "yesNo", yes: true });
      return /^(?:no|nope|not yet)$/.test(plain) ? answer({ kind: "yesNo", yes: false }) : { notUnderstood: true };
    case "document":
      // Papers have numbers; without one it is talk.
      return said.length <= 80 && /\d/.test(said) ? answer({ kind: "document", named: said }) : { notUnderstood: true };
    case "count":
    case "sameCount": {
      const read = number(/^none|nobody$/.test(plain) ? "0" : plain, "count");
      return "n" in read ? answer({ kind: "count", n: read.n }) : read;
    }
    case "measure": {
      if (/^none(?: here)?$/.test(plain)) return answer({ kind: "none" });
      const read = number(plain.replace(/ (?:showing|away|lean|leaning)$/, ""), asks.unit);
      return "n" in read ? answer({ kind: "measure", n: read.n, unit: asks.unit }) : read;
    }
    default:
      return { notUnderstood: true };
  }
}

function number(text: string, wants: Wants): { n: number } | Understood {
  const read = readNumber(text);
  if (!read) return { notUnderstood: true };
  const n = inUnit(read, wants);
  if (n === null) return { wrongUnit: { gave: read.unit ?? "", wants } };
  return { n: Math.round(n * 1e6) / 1e6 };
}
