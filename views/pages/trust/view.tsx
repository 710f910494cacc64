import { Page } from "../../parts/page.tsx";
import type { Words } from "../../text/words.ts";
import { CERTIFICATE_PATH, type TrustState } from "./state.ts";

type Props = { readonly trust: TrustState | null; readonly words: Words };

/** How each kind of phone gets and trusts the authority's certificate; or that this server is not on the site's network. */
export const TrustPage = ({ trust, words, words: { trust: said } }: Props) => (
  <Page words={words} title={said.title} styles="trust">
    <main class="trust" hx-ignore>
      <h1>{said.title}</h1>
      {trust ? <Trust trust={trust} words={words} /> : <p>{said.notOn}</p>}
    </main>
  </Page>
);

const Trust = ({ trust, words: { trust: said } }: { readonly trust: TrustState; readonly words: Words }) => (
  <>
    <p>{said.intro}</p>
    <p>{said.warns}</p>
    <section>
      <h2>{said.addresses}</h2>
      {trust.code === null ? <p>{said.noAddress}</p> : <Addresses addresses={trust.addresses} code={trust.code} label={said.code} />}
    </section>
    <section>
      <h2>{said.compare}</h2>
      <p>{said.compareText}</p>
      <p class="fingerprint">{said.fingerprint(trust.fingerprint)}</p>
      <a class="button main" href={CERTIFICATE_PATH}>
        {said.download}
      </a>
    </section>
    <section>
      <h2>{said.steps}</h2>
      {said.platforms.map(({ name, steps }) => (
        <details>
          <summary>{name}</summary>
          <ol>
            {steps.map((step) => (
              <li>{step}</li>
            ))}
          </ol>
        </details>
      ))}
    </section>
    <section class="means">
      <h2>{said.means}</h2>
      <p class="warning">{said.meansText}</p>
      <h2>{said.takeOff}</h2>
      <p>{said.takeOffText}</p>
      <dl>
        {said.platforms.map(({ name, remove }) => (
          <>
            <dt>{name}</dt>
            <dd>{remove}</dd>
          </>
        ))}
      </dl>
    </section>
  </>
);

type AddressProps = { readonly addresses: readonly string[]; readonly code: string; readonly label: string };

/** Every address, and the first as a code for the camera of the next phone. */
const Addresses = ({ addresses, code, label }: AddressProps) => (
  <>
    <div class="code" role="img" aria-label={label} dangerouslySetInnerHTML={{ __html: code }} />
    <ul>
      {addresses.map((address) => (
        <li>
          <a href={address}>{address}</a>
        </li>
      ))}
    </ul>
  </>
);
