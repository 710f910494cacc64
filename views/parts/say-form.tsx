import type { Child } from "hono/jsx";
import type { Drawn } from "../drawing/call/drawn.ts";
import type { GuideState } from "../pages/guide/state.ts";
import type { AsideState } from "../pages/learn/state.ts";
import type { Words } from "../text/words.ts";

/** Whom a screen lets in, and who is on the job with one. */
export type ScreenAccess = {
  readonly present: readonly string[];
  /** The people that it may be given to without a code; `null` is everybody. */
  readonly here: readonly string[] | null;
  readonly mayHandOutCodes: boolean;
  /** The server is one for trials: anybody answers as anybody. */
  readonly trials: boolean;
};

/** Whose screen it is, what it shows, and in which language: what every command is made from. */
export type Screen = {
  readonly guide: GuideState;
  readonly me: string | null;
  readonly access: ScreenAccess;
  readonly newKey: () => string;
  readonly words: Words;
  readonly drawn: Drawn;
  /** What somebody asked to answer besides what comes next: see `picked`. */
  readonly pick?: string | null;
  /** What a trainee is asked beside the call. */
  readonly aside?: AsideState | null;
};
type Props = { screen: Screen; fields: Record<string, string | number>; class?: string; children?: Child };

/** One command as a form: a plain post without scripts, the regions swapped with them. Each has a key of its own. */
export const SayForm = ({ screen: { guide, me, newKey }, fields, children, ...rest }: Props) => (
  <form
    method="post"
    action={`/jobs/${guide.job}/say`}
    hx-post={`/jobs/${guide.job}/say`}
    hx-swap="none"
    hx-sync="this:queue last"
    class={rest.class}
  >
    <input type="hidden" name="as" value={me ?? ""} />
    <input type="hidden" name="seen" value={guide.revision} />
    <input type="hidden" name="key" value={newKey()} />
    {Object.entries(fields).map(([name, value]) => (
      <input type="hidden" name={name} value={value} />
    ))}
    {children}
  </form>
);
