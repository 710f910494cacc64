import { isCumulative } from "../../../machines/install/checks/any-check.ts";
import type { Screen } from "../../parts/say-form.tsx";
import { askedToAgree } from "./agree.tsx";
import { answerKind, hasPad } from "./answers/answer-kind.ts";
import { askedNow, isNonePicked } from "./asked.ts";
import type { GateState } from "./state.ts";

type Line = {
  readonly is: "first" | "again" | "ask" | "item" | "place" | "limit" | "missing" | "standing" | "shown";
  readonly text: string;
};
const line = (is: Line["is"], text: string | null | false | undefined): Line[] => (text ? [{ is, text }] : []);

/** What is said largest, with the small lines over and under it. */
export type Said = { readonly over: readonly Line[]; readonly say: string; readonly under: readonly Line[] };

/**
 * What is said largest: what is to be done or answered now. A condition of the next work, and a gate that is asked again, come in
 * place of the call: that is done, or it waits. One that asks nothing itself may not be done yet, and stays above.
 */
export function saidOf(screen: Screen): Said {
  const { guide, words } = screen;
  const { call, gate } = guide;
  const { guide: text } = words;
  if (gate && isNonePicked(gate, screen.pick) && answerKind(screen) === "gate") return { over: [], say: gate.none!, under: [] };
  if (answerKind(screen) === "agree")
    return {
      over: line("first", text.proposed(guide.proposed!.by, guide.proposed!.because)),
      say: askedToAgree(guide.proposed!, words),
      under: line("first", call && text.after(call.say)),
    };
  if (!gate || !call || gate.asked === "here" || guide.hurt || guide.readBack || gate.shown || answerKind(screen) === "stop")
    return { over: [], say: call?.say ?? text.closed, under: [] };
  const before = gate.asked === "before";
  return {
    over: [
      ...line("first", before && !call.asks && text.now(call.say)),
      ...line("again", gate.because && (!before || call.asks) && text.askedAgain(gate.because)),
      ...line("again", gate.before),
    ],
    say: gate.say,
    under: line("first", !before && text.after(call.say)),
  };
}

/** What is asked: the question, and which of a list now; once it was answered and is not good, what is wrong with it and what to do. */
export function asksOf(screen: Screen): readonly Line[] {
  const { guide, words } = screen;
  const { gate } = guide;
  if (!gate || guide.hurt || guide.readBack) return [];
  const { guide: text } = words;
  if (answerKind(screen) === "agree") return [];
  const here = gate.asked === "here";
  if (isNonePicked(gate, screen.pick)) return [];
  // The weather is said above, larger.
  if (answerKind(screen) === "stop" && !here) return [];
  const again = line("again", here && gate.because && text.askedAgain(gate.because));
  const notBy = line("limit", gate.notBy && text.notBy(gate.notBy));
  const ask = line("ask", gate.ask !== saidOf(screen).say && gate.ask);
  // A pad leaves no room for the drawing.
  const place = line("place", guide.step === gate.id && hasPad(screen) && guide.call?.place);
  if (gate.shown) return [...again, ...line("shown", gate.value), ...line("shown", text.shownBy(gate.shown.name))];
  if (gate.status === "open")
    return [
      ...again,
      ...place,
      ...ask,
      ...itemLine(screen, gate),
      ...line("limit", !isCumulative(gate.check) && text.wanted(gate.limit)),
      ...notBy,
    ];
  if (gate.status !== "good" && gate.status !== "waived")
    return [...again, ...place, ...line("missing", refused(screen, gate)), ...itemLine(screen, gate), ...notBy];
  if (answerKind(screen) === "gate") return [...ask, ...itemLine(screen, gate)];
  return line("standing", gate.value === null ? gate.statusWords : text.given(gate.value, gate.statusWords));
}

/** What is wrong with the answer, and what to do. With a pad open again over a list it was read before: one line. */
const refused = (screen: Screen, gate: GateState): string =>
  hasPad(screen) && askedNow(gate, screen.pick, screen.words).of > 0
    ? screen.words.guide.soFar(gate.statusWords)
    : (screen.guide.missing ?? gate.ifNot);

/** Which of a list is put in now: "2 of 6: A to B, 100 ft". */
function itemLine({ words, pick }: Screen, gate: GateState): Line[] {
  const { item, no, of, settled } = askedNow(gate, pick, words);
  if (item === null || settled) return [];
  return line("item", words.guide.itemNow(no, of, item.given === null ? item.ask : words.guide.given(item.ask, item.given)));
}
