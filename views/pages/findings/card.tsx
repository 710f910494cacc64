import type { Words } from "../../text/words.ts";
import type { Card } from "./state.ts";

/** So many other entries are named; the record shows all of them. */
const MAX_NAMED = 6;
/** Longest note or reason, in letters. */
export const MAX_TEXT = 1000;

type Props = { readonly card: Card; readonly newKey: () => string; readonly back: string; readonly words: Words };

/** One finding: what the record shows, where, why it matters, what would explain it, what was said of it, and what can be done. */
export const FindingCard = ({ card, newKey, back, words, words: { findings } }: Props) => (
  <article id={card.id} class={card.state}>
    <h3>
      {card.title} <span class="is">{findings.stateIs(card.state)}</span>
    </h3>
    <p class="what">{card.what}</p>
    <dl>
      <dt>{findings.where}</dt>
      <dd>{card.where}</dd>
      {card.call !== null && (
        <>
          <dt>{findings.call}</dt>
          <dd>{card.call}</dd>
        </>
      )}
      <dt>{findings.why}</dt>
      <dd>{card.why}</dd>
      <dt>{findings.innocent}</dt>
      <dd>{card.innocent}</dd>
      {card.followUps.length > 0 && (
        <>
          <dt>{findings.saidSoFar}</dt>
          <dd>
            <ol>
              {card.followUps.map(({ isText, text, who, on }) => (
                <li>
                  <b>{who === null ? isText : `${isText} ${who}`}</b> <span>{text}</span> <small>{on}</small>
                </li>
              ))}
            </ol>
          </dd>
        </>
      )}
    </dl>
    <p class="to">
      <a class="button" href={card.link}>
        {findings.toEntry(card.entry)}
      </a>
      {card.others.length > 0 && (
        <small>{findings.entries(card.others.slice(0, MAX_NAMED).join(", "), Math.max(0, card.others.length - MAX_NAMED))}</small>
      )}
    </p>
    <Say card={card} newKey={newKey} back={back} words={words} />
  </article>
);

const Say = ({ card: { job, kind, entry, title, crew }, newKey, back, words: { findings } }: Props) => (
  <details class="say">
    <summary>{findings.say}</summary>
    <form method="post" action="/findings/followups">
      <input type="hidden" name="key" value={newKey()} />
      <input type="hidden" name="job" value={job} />
      <input type="hidden" name="kind" value={kind} />
      <input type="hidden" name="entry" value={entry} />
      <input type="hidden" name="back" value={back} />
      <label>
        {findings.sayWhat}
        <small>{findings.stays}</small>
        <textarea name="text" rows={3} maxlength={MAX_TEXT} required aria-label={findings.sayFor(title)}></textarea>
      </label>
      <div class="do">
        <button type="submit" name="is" value="noted">
          {findings.note}
        </button>
        <button type="submit" name="is" value="accepted">
          {findings.accept}
        </button>
        <label>
          {findings.who}
          <select name="who">
            <option value="">{findings.office}</option>
            {crew.map(({ value, text }) => (
              <option value={value}>{text}</option>
            ))}
          </select>
        </label>
        <button type="submit" name="is" value="followedUp">
          {findings.followUp}
        </button>
      </div>
    </form>
  </details>
);
