import { SEED_BOUNDS, TROUBLES, WAYS } from "../../../machines/install/practice.ts";
import type { PhaseId } from "../../../machines/install/step.ts";
import { JobScreen } from "../../parts/job-screen.tsx";
import type { Screen } from "../../parts/say-form.tsx";

/** How a job is rehearsed: with help or without, what goes wrong, where it begins, and which day it is. `seed` is one to do again. */
export const RehearsePage = ({ screen, phases, seed }: { screen: Screen; phases: readonly PhaseId[]; seed: string }) => {
  const { guide, newKey, words } = screen;
  const { rehearsal: text, phaseName } = words;
  return (
    <JobScreen screen={screen} title={text.title} class="rehearse">
      <p>{text.intro}</p>
      <form method="post" action={`/jobs/${guide.job}/rehearse`} class="how">
        <input type="hidden" name="key" value={newKey()} />
        <label>
          {text.trouble}
          <select name="trouble">
            {TROUBLES.map((trouble) => (
              <option value={trouble} selected={trouble === "some"}>
                {text.troubles[trouble]}
              </option>
            ))}
          </select>
        </label>
        <label>
          {text.from}
          <select name="from">
            {phases.map((phase) => (
              <option value={phase}>{phaseName(phase)}</option>
            ))}
          </select>
        </label>
        <label>
          {text.seed}
          <input
            name="seed"
            inputmode="numeric"
            autocomplete="off"
            value={seed}
            maxlength={String(SEED_BOUNDS.to).length}
            aria-describedby="seed-hint"
          />
        </label>
        <p id="seed-hint" class="source">
          {text.seedHint}
        </p>
        {WAYS.map((way) => (
          <>
            <button type="submit" name="way" value={way} class="main">
              {text.ways[way].name}
            </button>
            <p class="source">{text.ways[way].text}</p>
          </>
        ))}
      </form>
      <p class="source">{text.caution}</p>
    </JobScreen>
  );
};
