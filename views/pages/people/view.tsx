import { MAY_LEAD } from "../../../machines/install/hand-over.ts";
import { JobScreen } from "../../parts/job-screen.tsx";
import { SayForm, type Screen } from "../../parts/say-form.tsx";

/** Who is on the job: whose screen this is, and who may lead it. */
export const PeoplePage = (screen: Screen) => {
  const { guide, me, words } = screen;
  const { handOver, page } = words;
  const may = guide.people.filter(({ role, id }) => MAY_LEAD.includes(role) && id !== me);
  return (
    <JobScreen screen={screen} title={page.who}>
      <form method="get" action={`/jobs/${guide.job}`} class="tiles who">
        {guide.people.map((p) => (
          <button type="submit" name="as" value={p.id} aria-current={p.id === me ? "true" : undefined}>
            {page.you(p.name, p.roleName)}
          </button>
        ))}
      </form>
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
