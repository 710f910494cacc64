import { inUnit, readNumber, type Wants } from "../../machines/speech/numbers.ts";
import { edge } from "../../views/text/en/edge.ts";
import { Problem } from "./problem.ts";

export type Fields = Readonly<Record<string, string>>;

/** A form of the guide as the JSON that says the same. Numbers may be typed as a crew writes them: 5 1/2, 89' 5". */
export function saidFromForm(f: Fields): unknown {
  const around = { as: f.as, key: f.key, seen: Number(f.seen) };
  if (f.alternatives !== undefined)
    return { ...around, alternatives: listed(f.alternatives), talk: f.talk === "yes", readBack: f.readBack ? Number(f.readBack) : null };
  if (f.type === undefined || f.type === "") return { ...around, heard: f.heard };
  const say = { ...around, type: f.type };
  switch (f.type) {
    case "answer":
      return { ...say, gate: f.gate, value: valueFromForm(f) };
    case "waive":
      return { ...say, gate: f.gate, because: f.because };
    case "makeSafe":
    case "standDown":
      return { ...say, because: f.because };
    case "note":
      return { ...say, text: f.text };
    case "reading":
      return f.of === "thunder"
        ? { ...say, of: "thunder" }
        : { ...say, of: "wind", mph: numberIn(f.mph, "mph", "mph"), gustMph: f.gustMph ? numberIn(f.gustMph, "mph", "gustMph") : null };
    case "correct":
    case "wrong":
    case "agree":
    case "disagree":
      return { ...say, of: Number(f.of) };
    default:
      return say;
  }
}

/** A recogniser's guesses come one a line. */
const listed = (text: string) =>
  text
    .split("\n")
    .map((line) => line.trim())
    .filter((line) => line !== "");

function valueFromForm(f: Fields): unknown {
  switch (f.kind) {
    case "yesNo":
      return { kind: "yesNo", yes: f.value === "yes" };
    case "count":
      return { kind: "count", n: numberIn(f.value, "count", "value") };
    case "measure":
      return { kind: "measure", n: numberIn(f.value, f.unit as Wants, "value"), unit: f.unit };
    case "document":
      return { kind: "document", named: f.value };
    case "paper":
      return { kind: "paper", by: f.by, document: f.document };
    case "lengths": {
      // Left empty is not measured.
      const names = Object.keys(f).filter((k) => k.startsWith("ft.") && f[k]?.trim() !== "");
      return { kind: "lengths", ft: Object.fromEntries(names.map((k) => [k.slice(3), numberIn(f[k], "ft", k)])) };
    }
    case "counts": {
      const names = Object.keys(f).filter((k) => k.startsWith("n.") && f[k]?.trim() !== "");
      return { kind: "counts", n: Object.fromEntries(names.map((k) => [k.slice(2), numberIn(f[k], "count", k)])) };
    }
    default:
      return { kind: f.kind };
  }
}

function numberIn(text: string | undefined, wants: Wants, field: string): number {
  const said = readNumber(text ?? "");
  if (!said) throw new Problem(422, edge.bodyShape, { [field]: edge.notNumber(text ?? "") });
  const n = inUnit(said, wants);
  if (n === null) throw new Problem(422, edge.wrongUnit(said.unit ?? "", wants), { [field]: edge.wrongUnit(said.unit ?? "", wants) });
  return Math.round(n * 1e6) / 1e6;
}

const UTILITIES = ["electric", "gas", "communication", "water", "sewer", "reclaimedWater"];
const number = (text: string | undefined) => (text === undefined || text.trim() === "" ? null : Number(text));
const yes = (text: string | undefined) => text === "yes" || text === "on" || text === "true";
const list = (text: string) =>
  text
    .split(/[,+;\s]+/)
    .filter((t) => t !== "")
    .map(Number);

/** The open-a-job form as a brief. What it cannot read stays for readBrief to name. */
export function briefFromForm(f: Fields) {
  const numbers = (group: string, names: readonly string[]) => Object.fromEntries(names.map((n) => [n, number(f[`${group}.${n}`])]));
  const texts = (group: string, names: readonly string[]) => Object.fromEntries(names.map((n) => [n, f[`${group}.${n}`] ?? ""]));
  const mids = f["tent.midsFt"]?.trim();
  const lean = [number(f["sheet.stakeLeanDeg.from"]), number(f["sheet.stakeLeanDeg.to"])];
  const overhead = f["site.overhead"]?.trim() ?? "";
  const rows = [...new Set(Object.keys(f).flatMap((k) => /^crew\.(\d+)\./.exec(k)?.[1] ?? []))];
  return {
    title: f.title ?? "",
    zone: f.zone ?? "",
    rehearsal: yes(f.rehearsal),
    tent: {
      ...numbers("tent", ["widthFt", "lengthFt", "spacingFt", "quarterRings", "centrePoleFt", "sidePoleFt", "setbackFt"]),
      ...(mids ? { midsFt: list(mids) } : {}),
      onePiece: yes(f["tent.onePiece"]),
      splitEnds: yes(f["tent.splitEnds"]),
    },
    sheet: {
      ...texts("sheet", ["document", "stakeKind", "soil"]),
      ...numbers("sheet", [
        "stakeDiameterIn",
        "stakeLengthIn",
        "embedmentIn",
        "pullTestLbf",
        "squareInPer50Ft",
        "sidePoleLeanDeg",
        "raiseGustMph",
        "stopGustMph",
      ]),
      stakeLeanDeg: lean[0] === null || lean[1] === null ? null : { from: lean[0], to: lean[1] },
      interiorOrder: f["sheet.interiorOrder"] || "quartersFirst",
    },
    site: {
      ...texts("site", ["address", "muster", "firstAid"]),
      soilKnown: yes(f["site.soilKnown"]),
      overheadKv:
        overhead === "" || overhead === "none" ? [] : overhead.split(/[,;\s]+/).map((kv) => (kv === "unknown" ? null : Number(kv))),
    },
    ticket: {
      ...texts("ticket", ["number", "validFrom", "validTo"]),
      toleranceIn: number(f["ticket.toleranceIn"]) ?? 24,
      utilities: UTILITIES.flatMap((kind) => {
        const is = f[`ticket.utilities.${kind}`];
        return is === "marked" || is === "clear" ? [{ kind, marked: is === "marked" }] : [];
      }),
    },
    use: {
      ...numbers("use", ["occupants"]),
      permit: f["use.permit"] || "unknown",
      fabricCertificate: f["use.fabricCertificate"] || "unknown",
      walls: yes(f["use.walls"]),
      hungLoads: yes(f["use.hungLoads"]),
    },
    crew: rows.map((n) => ({ name: f[`crew.${n}.name`] ?? "", role: f[`crew.${n}.role`] ?? "" })).filter((p) => p.name.trim() !== ""),
  };
}
