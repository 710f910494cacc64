import { Hold } from "../../parts/hold.tsx";
import { Unlock } from "../../parts/lock.tsx";
import { SayForm, type Screen } from "../../parts/say-form.tsx";
import { regions } from "../../regions.ts";
import { LookAtIt } from "./agree.tsx";
import { isOfAnchors } from "./anchors.ts";
import { answerKind, isAskedHere } from "./answers/answer-kind.ts";
import { MakeSafe } from "./answers/answers.tsx";
import { takesUnknown, Unknown } from "./answers/press.tsx";
import { askedNow, pickIt } from "./asked.ts";
import { stopsFirst } from "./stop-first.tsx";

/** What stands under every call, in the same places: Hold first, More last; between them what else this call may need, and Talk. */
export const Row = (screen: Screen) => (
  <footer id={regions.dock} class="dock">
    {screen.me === null ? (
      !screen.guide.closed && <p class="no-hold">{screen.words.guide.noHold}</p>
    ) : (
      <>
        <Hold {...screen} />
        <Beside {...screen} />
        {screen.guide.closed || <Talk {...screen} />}
      </>
    )}
    <Unlock {...screen} />
    <a class="button more" href={`/jobs/${screen.guide.job}/more`}>
      {screen.words.guide.more}
    </a>
  </footer>
);

/** Shows where there is something to listen with, and whether the sound of it leaves the phone. */
const Talk = ({ words }: Screen) => (
  <div class="talk">
    <button type="button" data-talk>
      {words.guide.talk}
      <small class="stays">{words.guide.soundStays}</small>
      <small class="leaves">{words.guide.soundLeaves}</small>
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
  const link = (href: string, text: string) => (
    <a class="button beside" href={`/jobs/${guide.job}${href}`}>
      {text}
    </a>
  );
  const say = (type: "carryOn" | "next", text: string) => (
    <SayForm screen={screen} fields={{ type }} class="beside">
      <button type="submit">{text}</button>
    </SayForm>
  );
  if (kind === "stop") {
    if (guide.held) return say("carryOn", words.guide.carryOn);
    if (guide.missing === null) return say("next", words.guide.next);
    return isAskedHere(gate) ? link(`?pick=${pickIt(gate!)}`, words.guide.answerIt) : null;
  }
  if (kind === "agree") return isAskedHere(gate) ? link(`?pick=${pickIt(gate!)}`, words.guide.answerIt) : say("next", words.guide.next);
  if (kind === "gate" && stopsFirst(screen)) return <MakeSafe screen={screen} class="beside safe" />;
  if (kind === "hurt" || kind === "closed") return null;
  if (gate?.tile.input === "site") return link("/site", words.workedOut.look);
  if (guide.proposed && gate?.tile.input !== "facts") return <LookAtIt screen={screen} class="button beside" />;
  if (!gate) return isOfAnchors(guide.step) ? link("/anchors", words.anchors.title) : null;
  if (kind === "gate" && gate.cure) return link(`/${gate.cure.to}`, words.guide.fix[gate.cure.fixes]);
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
