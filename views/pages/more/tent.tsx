import { JobScreen, Way } from "../../parts/job-screen.tsx";
import type { Screen } from "../../parts/say-form.tsx";

/** All that there is to look up about this tent, and to change in it. */
export const TentPage = (screen: Screen) => {
  const { anchors, discrepancy, handWork, layout, more, page, photos, record, report, thisSite, time, trouble, truck } = screen.words;
  return (
    <JobScreen screen={screen} title={more.tent}>
      <div class="tiles">
        <Way screen={screen} to="plan" text={page.plan} />
        <Way screen={screen} to="layout" text={layout.title} />
        <Way screen={screen} to="site" text={thisSite.title} />
        <Way screen={screen} to="anchors" text={anchors.title} />
        <Way screen={screen} to="truck" text={truck.link} />
        <Way screen={screen} to="time" text={time.link} />
        <Way screen={screen} to="photos" text={photos.title} />
        <Way screen={screen} to="record" text={record.link} />
        <Way screen={screen} to="report" text={report.link} />
        {screen.guide.closed || <Way screen={screen} to="trouble" text={trouble.title} />}
        <Way screen={screen} to="discrepancy" text={discrepancy.title} />
        <a class="button" href={`/hand-work?job=${screen.guide.job}`}>
          {handWork.title}
        </a>
      </div>
    </JobScreen>
  );
};
