import { readNumber } from "../../machines/speech/en/numbers.ts";
import type { Wants } from "../../machines/speech/quantity.ts";
import { fahrenheitOf } from "../../machines/weather/air.ts";

type Fields = Readonly<Record<string, string>>;
/** The number in a field, in a unit that was chosen beside it. Throws a Problem where it is none. */
type NumberIn = (field: string, wants: Wants, unit?: string) => number;

/** To a tenth, and never to the kinder side. */
const tenthUp = (mph: number): number => Math.ceil(mph * 10 - 1e-6) / 10;

/** A reading in a form of the guide, as the JSON that says the same. */
export function readingFrom(f: Fields, numberIn: NumberIn): object {
  const speed = (field: string) => tenthUp(numberIn(field, "mph", f.unit));
  const air = () => {
    const n = numberIn("air", "count");
    return f.scale === "C" ? Math.round(fahrenheitOf(n) * 10) / 10 : n;
  };
  const beside = () => ({
    gustMph: f.gustMph ? speed("gustMph") : null,
    fromDeg: f.fromDeg ? numberIn("fromDeg", "deg") : null,
    ...(f.exposure ? { exposure: f.exposure } : {}),
    ...(f.heightFt ? { heightFt: numberIn("heightFt", "ft") } : {}),
  });
  switch (f.reading) {
    case "wind":
      return { kind: "wind", mph: speed("mph"), ...beside() };
    case "windByLook":
      return { kind: "windByLook", look: f.look, ...beside() };
    case "heat":
      return { kind: "heat", airF: air(), humidity: numberIn("humidity", "count"), sun: f.sun || null };
    case "cold":
      return { kind: "cold", airF: air(), windMph: tenthUp(numberIn("windMph", "mph", f.unit)) };
    case "thunder":
      return { kind: "thunder", ...(f.seconds?.trim() ? { seconds: secondsIn(f.seconds) } : {}) };
    case "warning":
      return { kind: "warning", what: f.what, until: f.until, issuer: f.issuer };
    default:
      return { kind: f.reading };
  }
}

/** A number where there is one, else the text as it came: nothing keeps thunder out. */
const secondsIn = (text: string): number | string => readNumber(text)?.n ?? text;
