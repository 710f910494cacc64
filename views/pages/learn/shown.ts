import { ROLES } from "../../../machines/install/roles.ts";
import type { Question, Shown, Worded } from "../../../machines/rehearsal/questions/question.ts";
import { callText, sayText } from "../../text/replies.ts";
import type { Words } from "../../text/words.ts";

/** A wind is asked in the same words whatever its limit is: its figure tells one from another. */
const askedText = (asked: Worded, words: Words): string =>
  typeof asked.params.belowMph === "number" ? words.questions.wind(asked.params.belowMph) : sayText(asked, words);

/** What an option says. A place has none but its number. */
export function shownText(shown: Shown, no: number, words: Words): string {
  const { questions, pieceName, phaseName } = words;
  switch (shown.is) {
    case "piece":
      return pieceName(shown.id);
    case "laced":
      return questions.laced(shown.lace, shown.eyelet);
    case "count":
      return questions.count(shown.n, shown.of);
    case "figure":
      return questions.figure(shown.n, shown.unit);
    case "time":
      return questions.time(shown.s);
    case "call":
      return sayText(shown, words);
    case "asked":
      return askedText(shown, words);
    case "refusal":
      return questions.refusal(shown.why);
    case "roles":
      return questions.roles(shown.roles, shown.roles.length === ROLES.length);
    case "phase":
      return phaseName(shown.id);
    case "half":
      return questions.half(shown.id);
    case "place":
      return questions.place(no);
  }
}

/** A question as it is read: what is asked, the call that it is about, and each option. */
export type QuestionTexts = {
  readonly ask: string;
  readonly about: string | null;
  readonly options: readonly { readonly id: string; readonly text: string }[];
};

export function questionTexts({ ask, params, about, options }: Question, words: Words): QuestionTexts {
  return {
    ask: words.questions.ask(ask, params),
    about: about && words.questions.about(sayText(about, words)),
    options: options.map(({ id, shown }, i) => ({ id, text: shownText(shown, i + 1, words) })),
  };
}

/** Why it is so, and what goes wrong otherwise: the call's own words, or else those of the question. */
export function becauseTexts({ because, ask }: Question, words: Words): Because | null {
  if (because) return { why: callText(because, words).why, wrong: callText(because, words).wrong };
  const why = words.questions.reason(ask);
  return why === "" ? null : { why, wrong: null };
}
export type Because = { readonly why: string; readonly wrong: string | null };
