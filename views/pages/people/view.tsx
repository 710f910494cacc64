import { MAY_LEAD } from "../../../machines/install/hand-over.ts";
import { JobScreen, Way } from "../../parts/job-screen.tsx";
import { Here } from "../../parts/present.tsx";
import { SayForm, type Screen } from "../../parts/say-form.tsx";

/** Who is on the job: whose screen this is, and who may lead it. */
export const PeoplePage = (screen: Screen) => {
  const { guide, me, access, words } = screen;
  const { handOver, join, page } = words;
  const isHere = (person: string) => access.here === null || access.here.includes(person);
  const lead = guide.people.find(({ role }) => role === "lead");
  const may = guide.people.filter(({ role, id }) => MAY_LEAD.includes(role) && id !== me);
  return (
    <JobScreen screen={screen} title={page.who} live={`/jobs/${guide.job}/people/live`}>
      <form method="get" action={`/jobs/${guide.job}`} class="tiles who">
        {guide.people
          .filter(({ id }) => isHere(id))
          .map((p) => (
            <button type="submit" name="as" value={p.id} aria-current={p.id === me ? "true" : undefined}>
              {page.you(p.name, p.roleName)}
            </button>
          ))}
      </form>
      <section>
        <h2>{words.guide.whoIsOn}</h2>
        <Here people={guide.people} present={access.present} words={words} />
      </section>
      {access.here !== null && (
        <a class="button" href={`/join?job=${guide.job}`}>
          {join.here}
        </a>
      )}
      {access.mayHandOutCodes && <Way screen={screen} to="codes" text={join.codes.title} />}
      {lead && guide.people.some(({ id, role }) => id === me && role === "deputy") && (
        <section class="hand-over">
          <h2>{handOver.gone(lead.name)}</h2>
          <SayForm screen={screen} fields={{ type: "takeLead" }}>
            <button type="submit">{handOver.take}</button>
          </SayForm>
        </section>
      )}
      {me !== null && may.length > 0 && (
        <section class="hand-over">
          <h2>{handOver.title}</h2>
          <div class="tiles">
            {may.map((p) => (
              <SayForm screen={screen} fields={{ type: "handOver", to: p.id }}>
                <button type="submit">{handOver.to(p.name, p.roleName)}</button>
              </SayForm>
            ))}
          </div>
        </section>
      )}
    </JobScreen>
  );
};
