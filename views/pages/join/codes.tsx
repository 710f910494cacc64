import { JobScreen } from "../../parts/job-screen.tsx";
import { QrCode } from "../../parts/qr-code.tsx";
import type { Screen } from "../../parts/say-form.tsx";

type One = { readonly code: string; readonly link: string };
type Props = {
  readonly screen: Screen;
  readonly crew: One;
  readonly leads: One;
  /** Where phones find this server; whether they can is not known where it is only this machine. */
  readonly address: string;
  readonly onlyHere: boolean;
};

/** The codes of a job, to be scanned, read out, or printed for the truck. */
export const CodesPage = ({ screen, crew, leads, address, onlyHere }: Props) => {
  const { codes } = screen.words.join;
  const parts = [
    { ...crew, title: codes.crew, told: codes.crewTold },
    { ...leads, title: codes.leads, told: codes.leadsTold },
  ];
  return (
    <JobScreen screen={screen} title={codes.title} class="codes">
      {onlyHere && <p class="only-here">{codes.onlyHere}</p>}
      {parts.map(({ code, link, title, told }) => (
        <section class="code-card">
          <h2>{title}</h2>
          <QrCode text={link} label={codes.square(code)} />
          <p class="code">{codes.code(code)}</p>
          <p>{codes.at(`${address}/join`)}</p>
          <p>{told}</p>
        </section>
      ))}
      <a class="button" href="/trust">
        {screen.words.trust.title}
      </a>
      <form method="post" action={`/jobs/${screen.guide.job}/codes`} class="renew">
        <p>{codes.renewTold}</p>
        <button type="submit">{codes.renew}</button>
      </form>
    </JobScreen>
  );
};
