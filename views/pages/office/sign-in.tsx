import { Page } from "../../parts/page.tsx";
import type { Words } from "../../text/words.ts";

type Props = { readonly to: string; readonly problem: string | null; readonly words: Words };

/** Signing in for the office. `to` is the page that somebody wanted. */
export const SignInPage = ({ to, problem, words, words: { office } }: Props) => (
  <Page words={words} title={office.signIn} styles="join">
    <main class="join" hx-ignore>
      <h1>{office.signIn}</h1>
      {problem !== null && (
        <p class="notice" role="alert">
          {problem}
        </p>
      )}
      <p>{office.told}</p>
      <form method="post" action="/office/in" class="code">
        <input type="hidden" name="to" value={to} />
        <label>
          {office.passphrase}
          <input type="password" name="passphrase" required maxlength={200} autocomplete="current-password" />
        </label>
        <button type="submit" class="main">
          {office.go}
        </button>
      </form>
      <p class="small">{office.forgotten}</p>
      <a class="button" href="/">
        {words.page.home}
      </a>
    </main>
  </Page>
);
