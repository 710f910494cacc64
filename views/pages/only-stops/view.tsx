import type { LiveJob } from "../../../machines/conversation/live-job.ts";
import { Lightning } from "../../parts/lightning.tsx";
import type { LightningFacts } from "../../parts/lightning-facts.ts";
import { Page } from "../../parts/page.tsx";
import type { Words } from "../../text/words.ts";

type Props = {
  readonly live: LiveJob;
  readonly as: string;
  readonly key: string;
  readonly why: string;
  readonly reply: string | null;
  /** The last thunder, for as long as it stops work: whoever may see nothing else still takes shelter. */
  readonly lightning: LightningFacts | null;
  readonly words: Words;
};

/** For a device that was on a job and may see it no more, or not yet: why, what stops the work all the same, and the way back in. */
export const OnlyStopsPage = ({ live, as, key, why, reply, lightning, words, words: { guide, hurt, join, more } }: Props) => {
  const id = live.entries.at(0)!.entry.job;
  const seen = live.job.snapshot.context.revision;
  return (
    <Page words={words} title={live.job.frozen.brief.title} styles="join">
      <main class="join" hx-ignore>
        <h1>{live.job.frozen.brief.title}</h1>
        <p class="notice">{why}</p>
        {lightning && <Lightning facts={lightning} words={words} />}
        {reply !== null && (
          <p class="notice" role="status">
            <b>{reply}</b>
          </p>
        )}
        <Stop job={id} as={as} seen={seen} name={`${key}-hold`} fields={{ type: "hold" }} class="hold">
          {guide.hold}
        </Stop>
        <Stop job={id} as={as} seen={seen} name={`${key}-hurt`} fields={{ type: "hurt" }}>
          {hurt.press}
        </Stop>
        <Stop job={id} as={as} seen={seen} name={`${key}-thunder`} fields={{ type: "reading", reading: "thunder" }}>
          {more.thunder}
        </Stop>
        <a class="button" href={`/join?${new URLSearchParams({ job: id })}`}>
          {join.again}
        </a>
      </main>
    </Page>
  );
};

type StopProps = {
  readonly job: string;
  readonly as: string;
  readonly seen: number;
  readonly name: string;
  readonly fields: Readonly<Record<string, string>>;
  readonly class?: string;
  readonly children: string;
};

const Stop = ({ job, as, seen, name, fields, children, ...rest }: StopProps) => (
  <form method="post" action={`/jobs/${job}/say`} class={rest.class}>
    <input type="hidden" name="as" value={as} />
    <input type="hidden" name="seen" value={seen} />
    <input type="hidden" name="key" value={name} />
    {Object.entries(fields).map(([field, value]) => (
      <input type="hidden" name={field} value={value} />
    ))}
    <button type="submit">{children}</button>
  </form>
);
