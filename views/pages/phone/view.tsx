import type { Child } from "hono/jsx";
import { JobScreen } from "../../parts/job-screen.tsx";
import { Page } from "../../parts/page.tsx";
import type { Screen } from "../../parts/say-form.tsx";
import type { Words } from "../../text/words.ts";
import { RATES } from "../../voice/settings.ts";

type Props = { readonly words: Words; readonly wakeWord: string };
type Check = keyof Words["phone"]["checks"];

/** Those that are about what somebody heard or felt: only they can say. */
const ASKED: ReadonlySet<Check> = new Set<Check>(["speaker", "buzz"]);

/** Whether a phone is fit for the job, on a page of its own. */
export const PhonePage = ({ words, wakeWord }: Props) => (
  <Page words={words} title={words.phone.title} styles="phone">
    <main class="phone-check" hx-ignore>
      <h1>{words.phone.title}</h1>
      <PhoneCheck words={words} wakeWord={wakeWord} />
    </main>
  </Page>
);

/** The same from a job, with Hold where it is. */
export const JobPhonePage = ({ screen, wakeWord }: { readonly screen: Screen; readonly wakeWord: string }) => (
  <JobScreen screen={screen} title={screen.words.phone.title} class="phone-check">
    <PhoneCheck words={screen.words} wakeWord={wakeWord} />
  </JobScreen>
);

/** Each check has its outcomes on the page; the script shows the one that it came to (`data-is`). */
const PhoneCheck = ({ words: { phone }, wakeWord }: Props) => (
  <>
    <p>{phone.intro}</p>
    <noscript>
      <p>{phone.noScripts}</p>
    </noscript>
    <button type="button" class="main" data-check-phone hidden>
      {phone.start}
    </button>
    <ul class="checks" data-speaks={phone.checks.speaker.says}>
      {Object.entries(phone.checks).map(([check, { name, ...outcomes }]) => (
        <Row name={name} check={check as Check} outcomes={outcomes}>
          {check === "word" && <b class="said">{wakeWord}</b>}
          {ASKED.has(check as Check) && (
            <span class="asks">
              {(["yes", "no"] as const).map((is) => (
                <button type="button" data-answer={is}>
                  {phone[is]}
                </button>
              ))}
            </span>
          )}
        </Row>
      ))}
    </ul>
    <p class="locked">{phone.locked}</p>
    <WhoListens phone={phone} />
    <HowItSpeaks phone={phone} />
  </>
);

type RowProps = {
  readonly check: Check;
  readonly name: string;
  readonly outcomes: Readonly<Record<string, string>>;
  readonly children?: Child;
};

const Row = ({ check, name, outcomes, children }: RowProps) => (
  <li data-check={check}>
    <h2>{name}</h2>
    <div role="status">
      {Object.entries(outcomes)
        .filter(([is]) => is !== "says")
        .map(([is, text]) => (
          <p data-outcome={is} hidden>
            {text} {is === "waits" && children}
          </p>
        ))}
    </div>
  </li>
);

const WhoListens = ({ phone, phone: { ears } }: Pick<Words, "phone">) => (
  <section class="who-listens" hidden>
    <h2>{ears.title}</h2>
    {(["either", "own", "browser"] as const).map((ear) => (
      <button type="button" data-ear={ear} aria-pressed="false">
        <b>{ears[ear]}</b>
        <span>{ears[`${ear}Text`]}</span>
      </button>
    ))}
    <button type="button" class="ask-browser" data-ask-browser hidden>
      {ears.ask}
    </button>
    <p data-browser="stays" hidden>
      {ears.stays}
    </p>
    <p data-browser="leaves" hidden>
      {ears.leaves}
    </p>
    <button type="button" data-headset aria-pressed="false">
      <b>{phone.headset}</b>
      <span>{phone.headsetText}</span>
    </button>
  </section>
);

const HowItSpeaks = ({ phone: { speech } }: Pick<Words, "phone">) => (
  <section class="speech" hidden>
    <h2>{speech.title}</h2>
    <h3 id="how-fast">{speech.rate}</h3>
    {/* biome-ignore lint/a11y/useSemanticElements: buttons in a row, not a form */}
    <div class="choices" role="group" aria-labelledby="how-fast">
      {RATES.map((rate) => (
        <button type="button" data-rate={rate} aria-pressed="false">
          {speech.rates[String(rate) as keyof typeof speech.rates]}
        </button>
      ))}
    </div>
    <h3 id="how-much">{speech.how}</h3>
    {/* biome-ignore lint/a11y/useSemanticElements: buttons in a row, not a form */}
    <div class="choices" role="group" aria-labelledby="how-much">
      <button type="button" data-short="no" aria-pressed="false">
        {speech.whole}
      </button>
      <button type="button" data-short="yes" aria-pressed="false">
        {speech.changed}
      </button>
    </div>
    <label>
      {speech.voice}
      <select data-voice-name>
        <option value="">{speech.anyVoice}</option>
      </select>
    </label>
    <button type="button" data-try>
      {speech.try}
    </button>
  </section>
);
