import type { Screen } from "../../parts/say-form.tsx";

/** What a lead who rehearses lets go by at a press, in minutes. */
const WAITS_MIN = [5, 30] as const;

/** The made-up site of a rehearsal: what is to be seen and heard there now, and, walked, what is right. */
export const Site = ({ guide: { site }, words: { rehearsal: text } }: Screen) =>
  site && (site.signs.length > 0 || site.look !== null || site.right !== null) ? (
    <section class="site" aria-label={text.site}>
      {site.signs.map((sign) => (
        <p class="sign">{sign}</p>
      ))}
      {site.look !== null && <p class="look">{site.look}</p>}
      {site.right !== null && (
        <p class="right">
          <b>{text.right}</b> {site.right}
        </p>
      )}
    </section>
  ) : null;

/** Time goes by at a press; and the way to where the rehearsal is gone over. */
export const SiteWays = ({ guide, me, newKey, words: { rehearsal: text } }: Screen) =>
  guide.site && (
    <div class="site-ways">
      {me !== null &&
        !guide.closed &&
        WAITS_MIN.map((minutes) => (
          <form
            method="post"
            action={`/jobs/${guide.job}/wait`}
            hx-post={`/jobs/${guide.job}/wait`}
            hx-swap="none"
            hx-sync="this:queue last"
          >
            <input type="hidden" name="as" value={me} />
            <input type="hidden" name="seen" value={guide.revision} />
            <input type="hidden" name="key" value={newKey()} />
            <input type="hidden" name="minutes" value={minutes} />
            <button type="submit">{text.wait(minutes)}</button>
          </form>
        ))}
      <a class="button" href={`/jobs/${guide.job}/look-back`}>
        {text.lookBack}
      </a>
    </div>
  );
