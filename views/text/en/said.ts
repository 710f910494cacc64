import { type BindingGist, type Gist, PRESSED, type Reading } from "../../../machines/install/commands.ts";
import { foundText } from "./found.ts";
import { valueText } from "./limits.ts";
import { sky } from "./sky.ts";
import { backText, outText } from "./trouble.ts";

/** A command that was pressed or sent, as it reads in the thread. */
export function saidText(command: Gist): string {
  switch (command.type) {
    case "next":
      return "Next";
    case "back":
      return "Back one";
    case "hold":
      return "HOLD";
    case "pause":
      return "Wait";
    case "readBack":
      return intentText(command.intent);
    case "correct":
      return "Correct";
    case "wrong":
      return "Wrong";
    case "carryOn":
      return command.became === null ? "Carry on" : `Carry on: ${command.became}`;
    case "hurt":
      return command.words === PRESSED ? "Somebody's hurt" : `Somebody's hurt: ${command.words}`;
    case "answer":
    case "waive":
    case "standDown":
    case "reading":
    case "outOfUse":
    case "backInUse":
    case "found":
      return intentText(command);
    case "makeSafe":
      return "Make safe";
    case "takeLead":
      return "I take the lead";
    case "note":
      return `Note: ${command.text}`;
    case "photo":
    case "unfitPhoto":
      return command.text === null ? "Photo" : `Photo: ${command.text}`;
    case "amend":
      return `Change the plan, because ${command.because}`;
    case "agree":
      return "Agreed";
    case "disagree":
      return "Not agreed";
  }
}

/** What binds, as it is read back and as it stands in the record. */
export function intentText(ask: BindingGist): string {
  switch (ask.type) {
    case "answer":
      return valueText(ask.value);
    case "waive":
      return `Left, because ${ask.because}`;
    case "standDown":
      return `Stand down, because ${ask.because}`;
    case "reading":
      return readingText(ask.reading);
    case "outOfUse":
      return outText(ask.thing, ask.because);
    case "backInUse":
      return backText(ask.thing, ask.because);
    case "found":
      return foundText(ask.what);
  }
}

function readingText(reading: Reading): string {
  switch (reading.kind) {
    case "noThunder":
      return `No thunder: ${reading.because}`;
    case "rain":
      return "Rain";
    case "thunder":
      return `Thunder or lightning${reading.seconds === undefined ? "" : `, ${reading.seconds} s from flash to bang`}`;
    case "warning":
      return sky.warning(reading);
    case "heat":
      return `${reading.airF} °F, ${reading.humidity}% humidity, ${sky.sun(reading.sun)}`;
    case "cold":
      return `${reading.airF} °F, wind ${reading.windMph} mph`;
    case "wind":
      return windSaid(reading);
  }
}

function windSaid({ mph, gustMph, fromDeg, look, exposure, heightFt }: Extract<Reading, { kind: "wind" }>): string {
  const by = look === undefined ? "" : `, ${sky.look(look)} by the look of it`;
  const where = exposure === undefined ? "" : exposure === "lee" ? ", in a lee" : ", in the open";
  const high = heightFt === undefined ? "" : `, at ${heightFt} ft`;
  return `Wind ${mph}${gustMph === null ? "" : ` gusting ${gustMph}`} mph${fromDeg === null ? "" : ` from ${compassPoint(fromDeg)}`}${by}${where}${high}`;
}

const POINTS = ["N", "NE", "E", "SE", "S", "SW", "W", "NW"] as const;
/** The nearest of eight points of the compass. */
export const compassPoint = (deg: number): string => POINTS[Math.round(deg / 45) % POINTS.length]!;
