import { Page } from "../../parts/page.tsx";
import { SayForm, type Screen } from "../../parts/say-form.tsx";
import { WindForm } from "../guide/gate-tile.tsx";
import { Proposal } from "../guide/proposal.tsx";

/** All that does not belong under the thumb at every call. The way out stands first. Plain forms: each leads back to the guide. */
export const MorePage = ({ wakeWord, ...screen }: Screen & { wakeWord: string }) => {
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
    <Page words={words} title={call.more}>
      <main class="more" hx-ignore>
        {guide.rehearsal && <p class="rehearsal">{page.notReal}</p>}
        <h1>{guide.title}</h1>
        <SayForm screen={screen} fields={{ type: "makeSafe" }} class="safe main">
          <button type="submit">{call.makeSafe}</button>
        </SayForm>
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
        <SayForm screen={screen} fields={{ type: "reading", reading: "thunder" }}>
          <button type="submit">{more.thunder}</button>
        </SayForm>
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
