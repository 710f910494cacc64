import type { Context } from "hono";
import { CrewStep } from "../../views/pages/draft/crew.tsx";
import { OpenedPage } from "../../views/pages/draft/opened.tsx";
import { SheetStep } from "../../views/pages/draft/sheet.tsx";
import { SiteStep } from "../../views/pages/draft/site.tsx";
import type { StepProps, TentNews } from "../../views/pages/draft/state.ts";
import { type DraftStep, STEP_FIELDS } from "../../views/pages/draft/steps.ts";
import { TentStep } from "../../views/pages/draft/tent.tsx";
import { TicketStep } from "../../views/pages/draft/ticket.tsx";
import { factsOf } from "../../views/parts/tent-facts.ts";
import type { Words } from "../../views/text/words.ts";
import { problemsAt } from "../draft/check-draft.ts";
import { crewRows, usualRole } from "../draft/crew-rows.ts";
import type { Draft, OpenedAs } from "../draft/draft.ts";
import { isUnknown, shownFields, zoneOf } from "../draft/draft-brief.ts";
import { heldOnDraft } from "../draft/draft-weather.ts";
import type { LiveDrafts, Stale } from "../draft/drafts.ts";
import { drawnOf, endsAsked } from "../draft/drawn.ts";
import { tentDigest, withListedTent } from "../draft/fill.ts";
import type { Fields } from "../input/form.ts";
import { previewOf } from "../input/preview.ts";
import { inWords } from "../input/problem.ts";
import type { Dependencies, LiveJobs } from "../jobs.ts";
import { createTentCatalog } from "../tent-catalog.ts";
import { page } from "./page.ts";

/**
 * How a step is shown: with what is wrong in it or without, with a tent of the list to be looked at, and told that something left as
 * it was went with what it belonged to.
 */
export type Shown = {
  readonly wrong?: boolean;
  readonly left?: Fields | null;
  readonly tent?: string | undefined;
  readonly status?: 200 | 409 | 422;
};

const EARLIER = 5;
const MAX_PEOPLE = 40;

/** The pages of a draft. */
export function draftPages({ journal, clock, newId }: Dependencies, drafts: LiveDrafts, liveJobs: LiveJobs) {
  const listOf = (words: Words) => createTentCatalog({ journal, clock, newId }, words);

  /** A step of a draft as it stands; of none yet where `draft` is `null`. */
  async function step(c: Context, draft: Draft | null, at: DraftStep, { wrong = false, tent, left = null, status = 200 }: Shown = {}) {
    const words = c.get("words");
    const stale = draft && (await drafts.stale(draft, words));
    const fields = draft?.fields ?? {};
    const now = drafts.now();
    const problems = wrong ? inWords(problemsAt(at, fields, now, words), words) : {};
    const props: StepProps = {
      words,
      draft: draft?.id ?? null,
      values: shownFields(fields, now),
      problems,
      untyped: new Set(STEP_FIELDS[at].flatMap(({ name }) => (fields[name] ? [] : [name]))),
      message: left ? words.draft.leftBehind : Object.keys(problems).length > 0 ? words.draft.wrong : null,
    };
    const news = stale && toldOf(fields, stale, words).told;
    if (at === "tent") return c.html(page(c, await tentStep(props, fields, stale, tent)), status);
    const soil = isUnknown(fields, "sheet") ? null : (fields["sheet.soil"] ?? "").trim();
    const shown = {
      sheet: () => <SheetStep {...props} news={news} />,
      site: () => <SiteStep {...props} soil={soil} left={left ?? {}} news={news} />,
      ticket: () => <TicketStep {...props} news={news} />,
      crew: () => (
        <CrewStep {...props} {...crewOf(fields, c.req.query("more"))} forecast={heldOnDraft(fields)} zone={zoneOf(fields)} news={news} />
      ),
    }[at]();
    return c.html(page(c, shown), status);
  }

  /** The tent as it is told, or one of the list that is looked at: the one that was picked, as it is now, where it changed. */
  async function tentStep(props: StepProps, fields: Fields, stale: Stale | null, asked: string | undefined) {
    const { words } = props;
    const looked = asked !== undefined ? await listOf(words).get(asked) : (stale?.now ?? null);
    const values = looked ? withListedTent(fields, looked, words) : fields;
    const folds = (await journal.folds()).flatMap(({ job, fold }) => (fold && !fold.rehearsal ? [{ id: job, ...fold }] : []));
    return (
      <TentStep
        {...props}
        values={{ ...props.values, ...values }}
        preview={previewOf(values, words).preview}
        drawn={drawnOf(values)}
        ends={looked ? null : endsAsked(values)}
        offered={looked && { id: looked.id, digest: tentDigest(looked) }}
        newKey={newId}
        news={asked === undefined && stale ? toldOf(fields, stale, words) : null}
        tents={[...(await listOf(words).saved()), ...listOf(words).examples()]}
        earlier={folds
          .slice(0, EARLIER)
          .map(({ id, title, widthFt, lengthFt }) => ({ id, title, size: words.page.size(widthFt, lengthFt) }))}
      />
    );
  }

  /** A draft that has become a job: what it was about is with the job. */
  async function opened(c: Context, { job, at }: OpenedAs, status: 200 | 409 = 200) {
    const words = c.get("words");
    const { names, job: live } = await liveJobs.load(job);
    const { title, zone, crew } = live.frozen.brief;
    const lead = crew.find(({ role }) => role === "lead")!.id;
    const told = words.draft.openedBy(names[lead] ?? lead, zone, at);
    return c.html(page(c, <OpenedPage job={job} title={title} told={told} words={words} />), status);
  }

  return { step, opened };
}

/** What became of a tent, and what is another figure in its plan by now. */
function toldOf(fields: Fields, { picked, now }: Stale, words: Words): TentNews {
  if (!now) return { told: words.draft.gone(picked), rows: [], gone: true };
  const { preview } = previewOf(fields, words);
  const before = "plan" in preview ? factsOf(preview.plan, words) : [];
  const rows = (now.plan ? factsOf(now.plan, words) : []).flatMap(([name, is], i) =>
    before[i] && before[i][1] !== is ? [words.draft.was(name, before[i][1], is)] : [],
  );
  return { told: words.draft.changed(picked), rows, gone: false };
}

/** Who stands in the rows of a draft, and the empty rows after them: two, and two more for each time that more were asked for. */
function crewOf(fields: Fields, more: string | undefined) {
  const rows = crewRows(fields);
  const last = Math.max(0, ...rows.map(({ row }) => row));
  const asked = /^\d$/.test(more ?? "") ? Number(more) : 0;
  const empty = Math.max(1, Math.min(2 + 2 * asked, MAX_PEOPLE - rows.length));
  return { rows, empty: Array.from({ length: empty }, (_, i) => ({ row: last + 1 + i, role: usualRole(last + 1 + i) })) };
}
