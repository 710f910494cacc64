import type { PhaseProgress } from "../../../machines/rehearsal/progress.ts";
import { READY } from "../../../machines/rehearsal/ready.ts";
import { MIN_DAYS_RIGHT, MIN_RECALL } from "../../../machines/rehearsal/repetition.ts";
import type { Words } from "../../text/words.ts";
import type { Standing } from "./state.ts";

const WIDE = 300;
const HIGH = 14;
const percent = (share: number): number => Math.round(share * 100);

/** One phase: what is known as a full bar, what is begun as a half one, in a frame that is all there is to ask. */
const PhaseBar = ({ phase, known, begun, of, words: { learn } }: PhaseProgress & { words: Words }) => {
  const wide = (n: number) => Math.round((n / of) * WIDE);
  return (
    <svg
      class="phase-bar"
      viewBox={`0 0 ${WIDE} ${HIGH}`}
      preserveAspectRatio="none"
      role="img"
      aria-label={learn.barTold(phase, known, of)}
    >
      <rect class="all" x="1" y="1" width={WIDE - 2} height={HIGH - 2} />
      <rect class="known" x="0" y="0" width={wide(known)} height={HIGH} />
      <rect class="known" x={wide(known)} y={HIGH - 4} width={wide(begun)} height="4" />
    </svg>
  );
};

/** Phase by phase, with its figures in words. */
export const Progress = ({ progress, words, words: { learn } }: Pick<Standing, "progress"> & { words: Words }) => (
  <ul class="phases">
    {progress.map((one) => (
      <li>
        <b>{learn.phase(one.phase)}</b>
        <span>{learn.stands(one.known, one.begun, one.new)}</span>
        <PhaseBar {...one} words={words} />
      </li>
    ))}
  </ul>
);

/** The rule, and what of it is still missing, in sentences. */
export const ReadyToLead = ({ lacking, words: { learn } }: Pick<Standing, "lacking"> & { words: Words }) => (
  <>
    <p>{learn.rule(percent(READY.minKnown), READY.minRehearsals, READY.maxDays)}</p>
    <p>{learn.knownMeans(MIN_DAYS_RIGHT, percent(MIN_RECALL))}</p>
    {lacking.length === 0 ? (
      <p>{learn.meets}</p>
    ) : (
      <>
        <p>{learn.missing}</p>
        <ul class="lacking">
          {lacking.map((one) => (
            <li>
              {one.is === "phase" ? learn.lacksPhase(one.phase, one.known, one.wanted, one.of) : learn.lacksRehearsals(one.led, one.wanted)}
            </li>
          ))}
        </ul>
      </>
    )}
    <p class="employer">{learn.employer}</p>
  </>
);

/** What somebody led or walked, the newest first. */
export const Rehearsals = ({ rehearsals, words: { learn } }: Pick<Standing, "rehearsals"> & { words: Words }) =>
  rehearsals.length === 0 ? (
    <p>{learn.noRehearsals}</p>
  ) : (
    <ul class="led">
      {rehearsals.map(({ when, what, went, to }) => (
        <li>
          {to === null ? <b>{`${when}: ${what}`}</b> : <a href={to}>{`${when}: ${what}`}</a>} <span>{went}</span>
        </li>
      ))}
    </ul>
  );
