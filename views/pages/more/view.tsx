import { Page } from "../../parts/page.tsx";
import { SayForm, type Screen } from "../../parts/say-form.tsx";
import { changes } from "../../text/en/changes.ts";
import { label } from "../../text/en/page.ts";
import { record } from "../../text/en/record.ts";
import { time } from "../../text/en/time.ts";
import { truck } from "../../text/en/truck.ts";
import { voice } from "../../text/en/voice.ts";
import { WindForm } from "../guide/gate-tile.tsx";
import { Proposal } from "../guide/proposal.tsx";

/** All that does not belong under the thumb at every call. The way out stands first. Plain forms: each leads back to the guide. */
export const MorePage = ({ wakeWord, ...screen }: Screen & { wakeWord: string }) => {
  const { guide } = screen;
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
    <Page title={label.more}>
      <main class="more" hx-ignore>
        {guide.rehearsal && <p class="rehearsal">{label.notReal}</p>}
        <h1>{guide.title}</h1>
        <SayForm screen={screen} fields={{ type: "makeSafe" }} class="safe main">
          <button type="submit">{label.makeSafe}</button>
        </SayForm>
        <Proposal {...screen} />
        <a class="button" href={`/jobs/${guide.job}`}>
          {label.guide}
        </a>
        <SayForm screen={screen} fields={{ type: "back" }}>
          <button type="submit">{label.back}</button>
        </SayForm>
        {withText("", "heard", label.words, label.say)}
        <section id="voice" hidden>
          <h2>{voice.title}</h2>
          <p data-status></p>
          <p>{voice.wakeWord(wakeWord)}</p>
          <p>{voice.leaves}</p>
          <div class="tiles">
            <button type="button" data-setting="listens">
              {voice.listen}
            </button>
            <button type="button" data-setting="speaks">
              {voice.speak}
            </button>
          </div>
        </section>
        <WindForm screen={screen} />
        <SayForm screen={screen} fields={{ type: "reading", reading: "thunder" }}>
          <button type="submit">{label.thunder}</button>
        </SayForm>
        {withText("note", "text", label.note, label.record)}
        <a class="button" href={`/jobs/${guide.job}/plan`}>
          {label.plan}
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
          {changes.title}
        </a>
        <form method="post" action={`/jobs/${guide.job}/rehearse`}>
          <input type="hidden" name="key" value={screen.newKey()} />
          <button type="submit">{label.rehearse}</button>
        </form>
        {withText("standDown", "because", label.because, label.standDown)}
        <form method="get" action={`/jobs/${guide.job}`} class="who">
          <p>{label.who}</p>
          {guide.people.map((p) => (
            <button type="submit" name="as" value={p.id}>
              {label.you(p.name, p.roleName)}
            </button>
          ))}
        </form>
      </main>
    </Page>
  );
};
