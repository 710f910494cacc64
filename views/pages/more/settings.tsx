import { JobScreen, Way } from "../../parts/job-screen.tsx";
import type { Screen } from "../../parts/say-form.tsx";

/** How this phone listens and speaks, the lock for a pocket, and whose screen it is. */
export const SettingsPage = ({ wakeWord, ...screen }: Screen & { wakeWord: string }) => {
  const { words } = screen;
  const { client, more, page } = words;
  return (
    <JobScreen screen={screen} title={more.settings}>
      <div class="tiles">
        <Way screen={screen} to="people" text={page.who} />
        <Way screen={screen} to="phone" text={words.phone.title} />
        <Way screen={screen} to="rehearse" text={more.rehearse} />
      </div>
      <section id="voice" hidden>
        <div class="tiles">
          <button type="button" data-lock>
            {more.lock}
          </button>
          <button type="button" data-setting="speaks">
            {client.speak}
          </button>
          <button type="button" data-setting="listens">
            {client.listen}
          </button>
        </div>
        <p data-status></p>
        <p class="source">{more.wakeWord(wakeWord)}</p>
        <p class="source">{more.leaves}</p>
      </section>
    </JobScreen>
  );
};
