import { indexOf } from "../../machines/install/script-index.ts";
import type { Frozen } from "../../machines/install/step.ts";
import { english } from "../../machines/speech/en/english.ts";
import { hear, type ListeningContext } from "../../machines/speech/hear.ts";
import type { Listening } from "../../machines/speech/listening.ts";
import type { Meaning } from "../../machines/speech/meanings.ts";
import type { Saying } from "./corpus.ts";

/** What became of a saying: as it was meant, nothing (it has to be said again), or something else. */
export type Score = "right" | "again" | "wrong";
export type Scored = Saying & { readonly score: Score; readonly heard: string };

/** What is listened for at a call of a job, or at what its work needs, by the gate's id. Throws where there is no such call. */
function listeningAt({ script }: Frozen, at: string): Listening {
  const step = script.steps.find(({ id }) => id === at);
  if (step) return { step, asks: null };
  const asks = indexOf(script).questions.get(at);
  if (!asks) throw new Error(`the demo job has no call ${at}, and asks nothing of that name`);
  const needs = (id: string) => script.steps.find((s) => s.needs.includes(id as never));
  return { step: needs(at) ?? null, asks };
}

/** A saying as it is understood at its call. */
export function scored(frozen: Frozen, saying: Saying): Scored {
  const listening = listeningAt(frozen, saying.at);
  const context: ListeningContext = {
    listening,
    attention: "working",
    waiting: saying.how === "read back",
    wakeWord: "albatross",
    stopGustMph: frozen.limits.stopGustMph.is,
    language: english,
  };
  const heard = hear({ alternatives: [saying.said], talk: saying.how !== "open" }, context);
  const meant: Meaning = "meant" in heard ? heard.meant : { notUnderstood: true };
  const did = described(meant);
  return { ...saying, score: scoreOf(saying.means, did), heard: did };
}

/** A remark is kept as a note, and answers nothing. */
const ASKED_AGAIN = new Set(["notUnderstood", "ask", "remark"]);

function scoreOf(means: string, did: string): Score {
  if (means === "chatter") return did === "notUnderstood" ? "right" : "wrong";
  if (means === "ask") return ASKED_AGAIN.has(did) ? "right" : "wrong";
  if (isSame(means, did)) return "right";
  // A hold where people only have to wait, or the other way round, is neither a danger nor what was meant.
  if (ASKED_AGAIN.has(did) || (means === "hold" && did === "pause")) return "again";
  return "wrong";
}

/** Of what the corpus calls by several names, by which one a meaning goes. */
const isSame = (means: string, did: string): boolean => canonical(means).some((one) => canonical(did).includes(one));

const IN_UNIT: Readonly<Record<string, readonly [string, number]>> = {
  in: ["in", 1],
  ft: ["in", 12],
  cm: ["in", 1 / 2.54],
  mm: ["in", 1 / 25.4],
  m: ["in", 100 / 2.54],
};
const IN_MPH: Readonly<Record<string, number>> = { mph: 1, kn: 1.150779, "km/h": 1 / 1.609344 };
/** Speeds are rounded up to a tenth: what is heard is held against what was said in whole tenths. */
const tenths = (mph: number) => String(Math.ceil(mph * 10 - 1e-6) / 10);
const inches = (n: number, unit: string) => {
  const [to, by] = IN_UNIT[unit] ?? [unit, 1];
  return `${(n * by).toFixed(4)} ${to}`;
};

/** The same meaning written the same way: lengths in inches, winds in mph, names in order; with its other readings. */
function canonical(means: string): string[] {
  const [kind = "", ...rest] = means.split(" ");
  if (kind === "none") return ["none", "count 0"];
  if (kind === "count") return [means, ...(means === "count 0" ? ["none"] : [])];
  if (kind === "measure") return [`measure ${inches(Number(rest[0]), rest[1] ?? "in")}`];
  if (kind === "wind") {
    const from = rest.indexOf("from");
    const numbers = (from < 0 ? rest : rest.slice(0, from)).filter((part) => !Number.isNaN(Number(part)));
    const unit = rest.find((part) => part in IN_MPH) ?? "mph";
    return [["wind", ...numbers.map((n) => tenths(Number(n) * IN_MPH[unit]!)), ...(from < 0 ? [] : rest.slice(from))].join(" ")];
  }
  if (kind === "figures") {
    const unit = rest.at(-1)!.includes("=") ? "count" : rest.at(-1)!;
    const parts = rest.filter((part) => part.includes("=")).map((part) => part.split("=") as [string, string]);
    return [
      `figures ${parts
        .map(([name, n]) => `${name}=${inches(Number(n), unit)}`)
        .sort()
        .join(" ")}`,
    ];
  }
  if (["each", "counts"].includes(kind)) return [`${kind} ${[...rest].sort().join(" ")}`];
  if (kind === "lengths")
    return [
      `lengths ${rest
        .map((part) => part.replace(/=(.+)/, (_, ft) => `=${Number(ft).toFixed(4)}`))
        .sort()
        .join(" ")}`,
    ];
  // A paper's number is the same however it is spaced.
  if (kind === "document")
    return [
      `document ${rest
        .join("")
        .toLowerCase()
        .replaceAll(/revision/g, "rev")
        .replaceAll(/[^a-z0-9]/g, "")}`,
    ];
  // Whose words are kept as they were said: that they are kept is what is looked at.
  if (["waive", "note", "standDown", "noThunder"].includes(kind))
    return [
      `${kind} ${rest
        .join(" ")
        .toLowerCase()
        .replaceAll(/[^a-z0-9 ]/g, "")}`,
    ];
  if (kind === "whatsNext") return ["whereNext"];
  if (kind === "howMany") return [means, ...(rest[0] === "poles" ? ["howMany sidePoles"] : [])];
  // A thing by what it is called: plates are stake plates and pole plates.
  if (kind === "where")
    return [means, ...rest.flatMap((name) => [`where ${name}`, `where ${/[A-Z][a-z]+$/.exec(name)?.[0].toLowerCase() ?? name}s`])];
  return [means];
}

/** A meaning as the corpus writes it. */
function described(meant: Meaning): string {
  if ("intent" in meant) {
    const { intent } = meant;
    if (intent.type === "answer") return ofValue(intent.value as never);
    if (intent.type === "waive") return `waive ${intent.because}`;
    if (intent.type === "note") return `note ${intent.text}`;
    if (intent.type === "standDown") return `standDown ${intent.because}`;
    return intent.type;
  }
  if ("question" in meant) {
    const { question } = meant;
    if (question.asks === "howMany") return `howMany ${question.what}`;
    if (question.asks === "howFarToTheRing") return "howMany toRing";
    if (question.asks === "where") return `where ${[...question.places, ...question.items].join(" ")}`;
    return question.asks;
  }
  if ("wind" in meant) {
    const { mph, gustMph, fromDeg } = meant.wind;
    return ["wind", mph, ...(gustMph === null ? [] : [gustMph]), ...(fromDeg === null ? [] : ["from", fromDeg])].join(" ");
  }
  // That it is what was read back, and then confirms it, is seen to elsewhere.
  if ("restated" in meant) return "correct";
  if ("confirm" in meant) return meant.confirm;
  if (
    "ambiguous" in meant ||
    "sayCorrect" in meant ||
    "wrongUnit" in meant ||
    "noSuchWind" in meant ||
    "noSuchAir" in meant ||
    "elsewhere" in meant
  )
    return "ask";
  if ("noThunder" in meant) return `noThunder ${meant.noThunder}`;
  if ("outOfUse" in meant) return `outOfUse ${meant.because}`;
  return Object.keys(meant)[0]!;
}

type Parts = Readonly<Record<string, unknown>>;
type AnyValue = {
  readonly kind: string;
  readonly yes: Parts;
  readonly n: Parts;
  readonly ft: Parts;
  readonly unit: string;
  readonly named: string;
};
const parts = (of: Parts, as = (v: unknown) => String(v)) => Object.entries(of).map(([name, v]) => `${name}=${as(v)}`);
function ofValue(value: AnyValue): string {
  switch (value.kind) {
    case "yesNo":
      return value.yes ? "yes" : "no";
    case "count":
      return `count ${value.n}`;
    case "measure":
      return `measure ${value.n} ${value.unit}`;
    case "figures":
      return `figures ${parts(value.n).join(" ")} ${value.unit}`;
    case "counts":
      return `counts ${parts(value.n).join(" ")}`;
    case "each":
      return `each ${parts(value.yes, (v) => (v ? "yes" : "no")).join(" ")}`;
    case "lengths":
      return `lengths ${parts(value.ft).join(" ")}`;
    case "document":
      return `document ${value.named}`;
    default:
      return value.kind;
  }
}
