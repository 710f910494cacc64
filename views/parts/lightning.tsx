import type { Words } from "../text/words.ts";
import type { LightningFacts } from "./lightning-facts.ts";

const two = (n: number): string => String(n).padStart(2, "0");
/** "26:10". */
export const countdown = (s: number): string => `${Math.floor(s / 60)}:${two(s % 60)}`;

/** The lightning clock: since when, how far, and how long it still has to be quiet. Right as it comes; with scripts it counts on. */
export const Lightning = ({ facts, words: { sky } }: { facts: LightningFacts; words: Words }) => (
  <p class="lightning" role="timer">
    {sky.thunder} <b data-ago-s={facts.agoS}>{Math.floor(facts.agoS / 60)}</b> {sky.minAgo}, {sky.off(facts)}; {sky.quietAt(facts.quietAt)}{" "}
    <Left facts={facts} />
  </p>
);

/** The same as a strip has room for: left to wait, since when, how far. */
export const LightningShort = ({ facts, words: { sky } }: { facts: LightningFacts; words: Words }) => (
  <span class="lightning-short">
    <Left facts={facts} />
    <span>
      <span data-ago-s={facts.agoS}>{Math.floor(facts.agoS / 60)}</span> {sky.minShort}
      {facts.miles !== null && sky.milesShort(facts.miles)}
    </span>
  </span>
);

/** How long it still has to be quiet. */
export const Left = ({ facts: { leftS } }: { facts: LightningFacts }) => <b data-left-s={leftS}>{countdown(leftS)}</b>;
