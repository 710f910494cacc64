/** Answers to what a crew asks. Each is short enough to hear. */
export const answers = {
  nothingAsked: "Nothing is asked here. Say next when it is done.",
  left: (calls: number, phase: string, here: number) => `${here} ${here === 1 ? "call" : "calls"} left to "${phase}", ${calls} in all.`,
  closed: "The job is closed. Nothing is left.",
  whereNext: (say: string) => `Next comes: ${say}`,
  lastCall: "This is the last call.",
  stations: (id: string, kind: string, edge: string) => `${id}: ${kind} on edge ${edge}.`,
  count: (n: number, what: string) => `${n} ${what}.`,
  each: (n: number, what: string, each: number, unit: string) => `${n} ${what}, ${each} ${unit} each, ${n * each} in all.`,
  cannotCount: (about: string) =>
    `The plan does not count "${about.slice(0, 40)}". Ask for stakes, plates, straps, poles, pieces, seams or rings.`,
  noSuchPlace: (about: string) =>
    `The plan has no place "${about.slice(0, 40)}". Ask for a station, a pole or a piece by its name, or say where next.`,
  thisPiece: (name: string) => `This is ${name}.`,
  thesePieces: (lace: string, eyelet: string) => `Loops of ${lace} go through the holes of ${eyelet}.`,
  thisSeam: (name: string) => `This is ${name}.`,
  noPiece: "No piece is in hand at this call.",
  ringAt: (ft: string) => `The ring is ${ft} from the middle. The plan does not count loops: lace until you reach it.`,
  noRing: "No ring is laced to at this call.",
  rightAngle: ({ alongFt, acrossFt, diagonalFt }: { alongFt: number; acrossFt: number; diagonalFt: number }, tape: string) =>
    `With a tape of ${tape}: ${alongFt} ft along the baseline, ${acrossFt} ft across, ${diagonalFt} ft between the two marks.`,
  noTape: (about: string) => `"${about.slice(0, 40)}" is no length of tape. Say it like: three four five with a fifty foot tape.`,
  shortTape: (tape: string) => `A tape of ${tape} is too short for three, four, five. Five feet at the least.`,
  at: (name: string, x: string, y: string) => `${name}: ${x} from the baseline, ${y} from edge DA.`,
} as const;
