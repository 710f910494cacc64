import { valueFromFields } from "../../machines/install/checks/values.ts";
import { readNumber } from "../../machines/speech/en/numbers.ts";
import type { Wants } from "../../machines/speech/quantity.ts";
import { inUnit } from "../../machines/speech/quantity.ts";
import { readingFrom } from "./form-reading.ts";
import { Problem, type Sentence } from "./problem.ts";

export type Fields = Readonly<Record<string, string>>;

/** A form of the guide as the JSON that says the same. Numbers may be typed as a crew writes them: 5 1/2, 89' 5". */
export function sayFromForm(f: Fields): unknown {
  const around = { as: f.as, key: f.key, seen: Number(f.seen) };
  if (f.alternatives !== undefined)
    return { ...around, alternatives: listed(f.alternatives), talk: f.talk === "yes", readBack: f.readBack ? Number(f.readBack) : null };
  if (f.type === undefined || f.type === "") return { ...around, heard: f.heard };
  const say = { ...around, type: f.type };
  switch (f.type) {
    case "answer":
      return { ...say, gate: f.gate, value: valueFromFields(f, (field, wants) => numberIn(f[field], wants, field)) };
    case "waive":
      return { ...say, gate: f.gate, because: f.because };
    case "makeSafe":
    case "standDown":
      return { ...say, because: f.because };
    case "outOfUse":
    case "backInUse":
      return { ...say, because: f.because, thing: thingFrom(f) };
    case "note":
      return { ...say, text: f.text };
    case "handOver":
      return { ...say, to: f.to };
    case "hurt":
      return { ...say, words: f.words };
    case "carryOn":
      return { ...say, became: f.became?.trim() || null };
    case "reading":
      if (f.reading === "noThunder") return { ...say, kind: f.reading, because: f.because };
      return { ...say, ...readingFrom(f, (field, wants, unit) => numberIn(withUnit(f[field], unit), wants, field)) };
    case "correct":
    case "wrong":
    case "agree":
    case "disagree":
      return { ...say, target: Number(f.target) };
    default:
      return say;
  }
}

/** A piece, or so many of a kit line. */
const thingFrom = (f: Fields) =>
  f.is === "kit" ? { is: f.is, item: f.item, short: numberIn(f.short, "count", "short") } : { is: f.is, id: f.id };

/** A recognizer's guesses come one a line. */
const listed = (text: string) =>
  text
    .split("\n")
    .map((line) => line.trim())
    .filter((line) => line !== "");

/** A bare number in the unit that was chosen beside it; one with a unit of its own keeps that. */
const withUnit = (text: string | undefined, unit: string | undefined): string | undefined =>
  unit && /^\s*-?[\d.]+\s*$/.test(text ?? "") ? `${text!.trim()} ${unit}` : text;

/** The number in a field. Throws a Problem that names the field where it is none, or of another unit. */
function numberIn(text: string | undefined, wants: Wants, field: string): number {
  const said = readNumber(text ?? "");
  if (!said) throw new Problem(422, (w) => w.errors.bodyShape, { [field]: (w) => w.errors.notNumber(text ?? "") });
  const n = inUnit(said, wants);
  const wrongUnit: Sentence = (w) => w.errors.wrongUnit(said.unit ?? "", wants);
  if (n === null) throw new Problem(422, wrongUnit, { [field]: wrongUnit });
  return Math.round(n * 1e6) / 1e6;
}
