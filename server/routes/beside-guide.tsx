import type { Context, Hono } from "hono";
import type { LiveJob } from "../../machines/conversation/live-job.ts";
import { currentStep, questionAt } from "../../machines/install/job.ts";
import { thingsOf } from "../../machines/install/things-of.ts";
import { spokenOn } from "../../machines/speech/languages.ts";
import { AnswersPage } from "../../views/pages/answers/view.tsx";
import { CallPage } from "../../views/pages/call/view.tsx";
import { ChangePage } from "../../views/pages/more/change.tsx";
import { SettingsPage } from "../../views/pages/more/settings.tsx";
import { StandDownPage } from "../../views/pages/more/stand-down.tsx";
import { TentPage } from "../../views/pages/more/tent.tsx";
import { TroublePage } from "../../views/pages/more/trouble.tsx";
import { MorePage } from "../../views/pages/more/view.tsx";
import { WordsPage } from "../../views/pages/more/words.tsx";
import { PeoplePage } from "../../views/pages/people/view.tsx";
import { JobPhonePage } from "../../views/pages/phone/view.tsx";
import { PicturePage } from "../../views/pages/picture/view.tsx";
import { AirPage } from "../../views/pages/wind/air.tsx";
import { airState } from "../../views/pages/wind/air-state.ts";
import { WeatherPage, WindPage } from "../../views/pages/wind/view.tsx";
import type { Screen } from "../../views/parts/say-form.tsx";
import type { LiveJobs } from "../jobs.ts";
import { wordToTry } from "../voice/pronunciations.ts";
import { page } from "./page.ts";

type Rendered = Parameters<typeof page>[1];
type BesideGuide = (shown: Screen, live: LiveJob, jobs: LiveJobs) => Rendered;

/** The pages of a job beside its guide, by their paths: each is one phone screen, and shows the job as it stands. */
const PAGES: Readonly<Record<string, BesideGuide>> = {
  more: (shown) => <MorePage {...shown} />,
  words: (shown, { job, now }) => (
    <WordsPage screen={shown} sayable={spokenOn(shown.words.lang).sayableAt({ step: currentStep(job), asks: questionAt(job, now.at) })} />
  ),
  tent: (shown) => <TentPage {...shown} />,
  settings: (shown, _, { wakeWord }) => <SettingsPage {...shown} wakeWord={wakeWord} />,
  phone: (shown, _, { wakeWord }) => <JobPhonePage screen={shown} wakeWord={wordToTry(wakeWord)} />,
  trouble: (shown, { job }) => <TroublePage screen={shown} things={thingsOf(job.frozen)} />,
  "stand-down": (shown) => <StandDownPage {...shown} />,
  change: (shown) => <ChangePage {...shown} />,
  people: (shown) => <PeoplePage {...shown} />,
  wind: (shown, live) => <WindPage {...shown} air={airState(live, shown.words)} />,
  weather: (shown, live) => <WeatherPage {...shown} air={airState(live, shown.words)} />,
  air: (shown, live) => <AirPage {...shown} air={airState(live, shown.words)} />,
  call: (shown) => <CallPage {...shown} />,
  picture: (shown) => <PicturePage {...shown} />,
  answers: (shown) => <AnswersPage {...shown} />,
};

/** Adds them to an application; `screenOf` is the screen that a request is made on. */
export function besideGuide(app: Hono, jobs: LiveJobs, screenOf: (c: Context, live: LiveJob) => Screen): void {
  for (const [path, view] of Object.entries(PAGES))
    app.get(`/jobs/:id{[\\w-]+}/${path}`, async (c) => {
      const live = await jobs.load(c.req.param("id")!);
      return c.html(page(c, view(screenOf(c, live), live, jobs)));
    });
}
