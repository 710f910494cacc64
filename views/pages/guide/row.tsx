import { Hold } from "../../parts/hold.tsx";
import { Unlock } from "../../parts/lock.tsx";
import { SayForm, type Screen } from "../../parts/say-form.tsx";
import { regions } from "../../regions.ts";
import { answerKind } from "./answers/answer-kind.ts";
import { takesUnknown, Unknown } from "./answers/press.tsx";
import { askedNow, pickIt } from "./asked.ts";

/** What stands under every call, in the same places: Hold first, More last; between them what else this call may need, and Talk. */
export const Row = (screen: Screen) => (
  <footer id={regions.dock} class="dock">
    {screen.me !== null && (
      <>
        <Hold {...screen} />
        <Beside {...screen} />
        <Talk {...screen} />
      </>
    )}
    <Unlock {...screen} />
    <a class="button more" href={`/jobs/${screen.guide.job}/more`}>
      {screen.words.guide.more}
    </a>
  </footer>
);

/** Shows where the browser can listen. */
const Talk = ({ words }: Screen) => (
  <div class="talk">
    <button type="button" data-talk>
      {words.guide.talk}
    </button>
  </div>
);

/** The one press besides the answers: against a read-back, out of a stop, to the rest of a list, to the other ways to answer. */
const Beside = (screen: Screen) => {
  const { guide, words, pick } = screen;
  const { gate } = guide;
  const kind = answerKind(screen);
  if (kind === "readBack")
    return (
      <SayForm screen={screen} fields={{ type: "wrong", target: guide.readBack!.entry }} class="beside wrong-one">
        <button type="submit">{words.guide.wrongOne}</button>
      </SayForm>
    );
  if (guide.weather.is === "stop" && !guide.closed)
    return (
      <SayForm screen={screen} fields={{ type: "makeSafe" }} class="beside safe">
        <button type="submit">{words.guide.makeSafe}</button>
      </SayForm>
    );
  const link = (href: string, text: string) => (
    <a class="button beside" href={`/jobs/${guide.job}${href}`}>
      {text}
    </a>
  );
  if (!gate || kind === "hurt" || kind === "closed") return null;
  if (kind === "held" || kind === "next") return link(`?pick=${pickIt(gate)}`, kind === "held" ? words.guide.answerIt : words.guide.again);
  const { no, of } = askedNow(gate, pick, words);
  if (of > 0) return link("/answers", words.guide.list(no, of));
  if (gate.paper !== null || !gate.hard || kind === "seen") return link("/answers", words.guide.other);
  return takesUnknown(gate) ? (
    <div class="beside">
      <Unknown screen={screen} gate={gate} />
    </div>
  ) : null;
};
