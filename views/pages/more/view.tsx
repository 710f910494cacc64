import { MAY_LEAD } from "../../../machines/install/hand-over.ts";
import type { Things } from "../../../machines/install/things-of.ts";
import { HurtPress } from "../../parts/hurt-press.tsx";
import { Page } from "../../parts/page.tsx";
import { SayForm, type Screen } from "../../parts/say-form.tsx";
import { WindForm } from "../guide/gate-tile.tsx";
import { Proposal } from "../guide/proposal.tsx";
import { Trouble } from "./trouble.tsx";

/** What stops work, or asks for more, whoever says it. */
const Alarms = (screen: Screen) => {
  const { more } = screen.words;
  const told = (reading: "thunder" | "warning" | "rain", text: string) => (
    <SayForm screen={screen} fields={{ type: "reading", reading }}>
      <button type="submit">{text}</button>
    </SayForm>
  );
  return (
    <section class="alarms">
      <h2>{more.alarms}</h2>
      <div class="tiles">
        {told("thunder", more.thunder)}
        {told("warning", more.warning)}
        {told("rain", more.rain)}
        <SayForm screen={screen} fields={{ type: "makeSafe", because: more.everybodyOutBecause }}>
          <button type="submit">{more.everybodyOut}</button>
        </SayForm>
      </div>
    </section>
  );
};

/** The lead put forward to somebody who may have it. */
const HandOver = (screen: Screen) => {
  const { guide, words } = screen;
  const may = guide.people.filter(({ role }) => MAY_LEAD.includes(role));
  return (
    <section class="hand-over">
      <h2>{words.handOver.title}</h2>
      <div class="more">
        {may.map((p) => (
          <SayForm screen={screen} fields={{ type: "handOver", to: p.id }}>
            <button type="submit">{words.handOver.to(p.name, p.roleName)}</button>
          </SayForm>
        ))}
      </div>
    </section>
  );
};

/** All that does not belong under the thumb at every call. Help and the way out stand first. Plain forms: each leads back to the guide. */
export const MorePage = ({ wakeWord, things, ...screen }: Screen & { wakeWord: string; things: Things }) => {
  const { guide, words } = screen;
  const { discrepancy, guide: call, more, page, record, time, truck } = words;
  const withText = (type: string, name: string, text: string, button: string) => (
    <SayForm screen={screen} fields={type === "" ? {} : { type }}>
      <label>
        {text}
        <input name={name} required maxlength={300} autocomplete="off" />
      </label>
      <button type="submit">{button}</button>
    </SayForm>
  );
  return (
    <Page words={words} title={call.more} hurt={guide.hurt} follows={guide.job}>
      <main class="more" hx-ignore>
        {guide.rehearsal && <p class="rehearsal">{page.notReal}</p>}
        <h1>{guide.title}</h1>
        <HurtPress {...screen} />
        <SayForm screen={screen} fields={{ type: "makeSafe" }} class="safe main">
          <button type="submit">{call.makeSafe}</button>
        </SayForm>
        <Alarms {...screen} />
        <Proposal {...screen} />
        <a class="button" href={`/jobs/${guide.job}`}>
          {page.guide}
        </a>
        <SayForm screen={screen} fields={{ type: "back" }}>
          <button type="submit">{more.back}</button>
        </SayForm>
        {withText("", "heard", more.words, more.say)}
        <section id="voice" hidden>
          <h2>{more.voice}</h2>
          <p data-status></p>
          <p>{more.wakeWord(wakeWord)}</p>
          <p>{more.leaves}</p>
          <div class="tiles">
            <button type="button" data-setting="listens">
              {words.client.listen}
            </button>
            <button type="button" data-setting="speaks">
              {words.client.speak}
            </button>
          </div>
        </section>
        <WindForm screen={screen} />
        {guide.closed || <Trouble screen={screen} things={things} />}
        {withText("note", "text", more.note, page.record)}
        <a class="button" href={`/jobs/${guide.job}/plan`}>
          {page.plan}
        </a>
        <a class="button" href={`/jobs/${guide.job}/truck`}>
          {truck.link}
        </a>
        <a class="button" href={`/jobs/${guide.job}/time`}>
          {time.link}
        </a>
        <a class="button" href={`/jobs/${guide.job}/record`}>
          {record.link}
        </a>
        <a class="button" href={`/jobs/${guide.job}/discrepancy`}>
          {discrepancy.title}
        </a>
        <form method="post" action={`/jobs/${guide.job}/rehearse`}>
          <input type="hidden" name="key" value={screen.newKey()} />
          <button type="submit">{more.rehearse}</button>
        </form>
        {withText("standDown", "because", page.because, more.standDown)}
        <HandOver {...screen} />
        <form method="get" action={`/jobs/${guide.job}`} class="who">
          <p>{page.who}</p>
          {guide.people.map((p) => (
            <button type="submit" name="as" value={p.id}>
              {page.you(p.name, p.roleName)}
            </button>
          ))}
        </form>
      </main>
    </Page>
  );
};
