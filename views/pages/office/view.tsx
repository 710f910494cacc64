import { HouseDigest } from "../../parts/digests.tsx";
import { Page } from "../../parts/page.tsx";
import type { Words } from "../../text/words.ts";
import type { Digests } from "../proof/state.ts";

type Token = { readonly id: string; readonly name: string; readonly made: string; readonly revoked: boolean };
/** Something in the log, in words. */
type Event = { readonly at: string; readonly text: string; readonly about: string };
export type OfficeState = {
  readonly tokens: readonly Token[];
  /** A token that was just made: the only time that it can be read. */
  readonly secret: string | null;
  readonly events: readonly Event[];
  readonly house: Digests["house"];
  readonly notice: string | null;
  /** What is wrong with what was typed, by field. */
  readonly problems: Readonly<Record<string, string>>;
};
type Props = { readonly state: OfficeState; readonly words: Words };

/** What the office looks after besides its jobs: its passphrase, tokens for scripts, and who came in. */
export const OfficePage = ({ state: { tokens, secret, events, house, notice, problems }, words, words: { office, proof } }: Props) => (
  <Page words={words} title={office.title} where={{ on: "office" }} styles="join">
    <main class="join office" hx-ignore>
      <h1>{office.title}</h1>
      {notice !== null && (
        <p class="notice" role="status">
          {notice}
        </p>
      )}
      <section>
        <h2>{office.tokens}</h2>
        <p>{office.tokensTold}</p>
        {secret !== null && (
          <p class="notice" role="status">
            {office.tokenOnce} <code>{office.tokenIs(secret)}</code>
          </p>
        )}
        {tokens.length === 0 ? <p>{office.noTokens}</p> : <ul class="tokens">{tokens.map((token) => TokenRow({ token, office }))}</ul>}
        <form method="post" action="/office/tokens" class="code">
          <Field name="name" label={office.tokenName} problem={problems.name} kind="text" />
          <button type="submit">{office.makeToken}</button>
        </form>
      </section>
      <section>
        <h2>{office.change}</h2>
        <form method="post" action="/office/passphrase" class="code">
          <Field name="now" label={office.now} problem={problems.now} kind="current-password" />
          <Field name="next" label={office.next} problem={problems.next} kind="new-password" />
          <button type="submit">{office.changeIt}</button>
        </form>
      </section>
      <section>
        <h2>{proof.house}</h2>
        <p>{proof.houseTold}</p>
        {house === null ? <p>{proof.noHouse}</p> : <HouseDigest house={house} words={words} />}
        <p>{`${proof.writeDown} ${proof.command}`}</p>
      </section>
      <section>
        <h2>{office.log}</h2>
        <p>{office.logTold}</p>
        {events.length === 0 && <p>{office.noLog}</p>}
        <ol class="events">
          {events.map(({ at, text, about }) => (
            <li>
              <time>{at}</time> <b>{text}</b> <span>{about}</span>
            </li>
          ))}
        </ol>
      </section>
      <form method="post" action="/office/out">
        <button type="submit">{office.out}</button>
      </form>
      <a class="button" href="/">
        {words.page.home}
      </a>
    </main>
  </Page>
);

type FieldProps = {
  readonly name: string;
  readonly label: string;
  readonly problem: string | undefined;
  readonly kind: "text" | "current-password" | "new-password";
};

const Field = ({ name, label, problem, kind }: FieldProps) => (
  <label>
    {label}
    <input
      name={name}
      type={kind === "text" ? "text" : "password"}
      autocomplete={kind === "text" ? "off" : kind}
      required
      maxlength={kind === "text" ? 60 : 200}
      aria-describedby={problem === undefined ? undefined : `${name}-wrong`}
    />
    {problem !== undefined && (
      <span class="wrong" id={`${name}-wrong`} role="alert">
        {problem}
      </span>
    )}
  </label>
);

const TokenRow = ({ token, office }: { token: Token; office: Words["office"] }) => (
  <li>
    <b>{token.name}</b> <span>{token.revoked ? office.revoked : token.made}</span>
    {!token.revoked && (
      <form method="post" action="/office/tokens/revoke">
        <input type="hidden" name="id" value={token.id} />
        <button type="submit" aria-label={office.revokeNamed(token.name)}>
          {office.revoke}
        </button>
      </form>
    )}
  </li>
);
