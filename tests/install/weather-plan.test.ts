import { describe, expect, it } from "vitest";
import { changesOf } from "../../machines/install/changes.ts";
import { freeze } from "../../machines/install/freeze.ts";
import { missingNow } from "../../machines/install/job.ts";
import { timeLeft } from "../../machines/install/time-left.ts";
import { levelsOf } from "../../machines/install/watch.ts";
import { levelAt, readingDue } from "../../machines/install/watch-now.ts";
import { disagreements } from "../proof/disagreements.ts";
import { MINUTE, START } from "../proof/fixtures.ts";
import { Crew } from "../support/crew.ts";
import { FORECAST as forecast, HOUR, WEATHER_PLAN as plan, type WeatherParts, withWeather } from "../support/weather-plan.ts";

const callsOf = (parts: WeatherParts) => freeze(withWeather(parts)).script.steps.map(({ id }) => id);
const crewAt = (call: string, parts: WeatherParts) => new Crew(withWeather(parts)).goTo(call);
/** What keeps "next" from leading on. */
const missing = ({ job, at }: Crew) => missingNow(job, at + 1000);
const warning = (crew: Crew) => crew.say({ type: "reading", reading: { kind: "warning", takenAt: crew.at } }, "crew");

describe("a forecast that is held against the limits", () => {
  const OWN = ["forecast.over", "forecast.raising", "forecast.fresh", "forecast.clearBy"];
  it.each([
    [34, null, ["forecast.over", "forecast.fresh"]],
    [34, START + 47 * HOUR, ["forecast.over", "forecast.fresh", "forecast.clearBy"]],
    [22, null, ["forecast.raising", "forecast.fresh"]],
    [12, null, ["forecast.fresh"]],
  ])("with gusts of %i and %s agreed brings %j", (gustMph, clearBy, calls) => {
    expect(callsOf({ forecast: { ...forecast, gustMph, clearBy } }).filter((id) => OWN.includes(id))).toEqual(calls);
  });
  it("brings no call where nobody told one", () => expect(callsOf({}).filter((id) => OWN.includes(id))).toEqual([]));
  it("keeps the handover shut while the newest is over the limit", () => {
    const crew = crewAt("forecast.fresh", { forecast });
    crew.say({ type: "answer", gate: "forecast.fresh", value: { kind: "measure", n: 34, unit: "mph" } });
    expect(missing(crew)).toMatchObject({ gate: "forecast.fresh", status: "outOfLimit" });
  });
  it("opens up to the gust for which an hour was agreed", () => {
    const crew = crewAt("forecast.fresh", { forecast: { ...forecast, clearBy: forecast.from } });
    const said = crew.say({ type: "answer", gate: "forecast.fresh", value: { kind: "measure", n: 34, unit: "mph" } });
    expect(said).toMatchObject({ did: "answered", and: "moved" });
  });
  it("lets nobody in from the agreed hour on", () => {
    const clearBy = START + 30 * MINUTE;
    const crew = crewAt("open", { forecast: { ...forecast, from: clearBy, clearBy } });
    crew.at = clearBy;
    expect(missing(crew)).toEqual({ why: "pastHour", clearBy });
  });
});

describe("the weather plan at the handover", () => {
  it("has the gates of the table by hand", () => {
    const whole = freeze(withWeather({ weatherPlan: plan, forecast: { ...forecast, clearBy: forecast.from } }));
    expect(disagreements(whole)).toEqual([]);
  });
  it("is agreed to by somebody other than who told it", () => {
    const crew = crewAt("storm.agreed", { weatherPlan: plan });
    crew.say({ type: "answer", gate: "storm.agreed", value: { kind: "yesNo", yes: true } }, "lead");
    expect(missing(crew)).toMatchObject({ gate: "storm.agreed", status: "samePerson" });
  });
  it("is asked again once it was changed", () => {
    const crew = crewAt("night.watch", { weatherPlan: plan });
    crew.amend(freeze(withWeather({ weatherPlan: { ...plan, clearMin: 20 } })));
    crew.answer("good", "lead", "forecast.fresh");
    expect(missing(crew)).toMatchObject({ gate: "storm.plan", asked: "again", because: "amendment" });
  });
});

describe("a standing tent with a weather plan", () => {
  it("has its levels at three and four fifths of the limit, rounded down", () =>
    expect(levelsOf(28)).toEqual({ at60: 16, at80: 22, atLimit: 28 }));
  it("is gone around, tensioned and walked again after a blow before anybody goes back in", () => {
    const crew = crewAt("watch", { weatherPlan: plan });
    crew.gust(40);
    crew.at += 31 * MINUTE;
    crew.gust(8);
    const asked: string[] = [];
    for (let i = 0; i < 9 && crew.missing !== null; i++) {
      asked.push(crew.missing);
      crew.oneMore();
    }
    expect(asked).toEqual(["round.again", "walked", "watch"]);
  });
  it("is surveyed before anybody goes back in after everybody was sent out", () => {
    const crew = crewAt("open", { weatherPlan: plan });
    crew.say({ type: "makeSafe", because: null });
    crew.goTo("safe.standing.looked");
    crew.answer("good");
    expect(crew.ready().call).toBe("safe.standing.looked");
    expect(crew.job.snapshot.context.answers.survey).toMatchObject({ value: { kind: "count", n: 0 } });
  });
  it("keeps people out while a warning is in force", () => {
    const crew = crewAt("tension.again", { weatherPlan: plan });
    crew.answer("good");
    warning(crew);
    expect(missing(crew)).toMatchObject({ gate: "warning", status: "outOfLimit" });
  });
});

describe("readings of a standing tent", () => {
  const { watch } = freeze(withWeather({ weatherPlan: plan })).script;
  const after = (gustMph: number, min: number) => {
    const wind = { mph: 5, gustMph, fromDeg: null, takenAt: START };
    return readingDue(watch!, { answers: {}, wind }, START + min * MINUTE)!.is;
  };
  it.each([
    [8, 19, "later"],
    [8, 21, "quiet"],
    [8, 31, "top"],
    [8, 40, "loud"],
    [15, 9, "later"],
    [15, 11, "quiet"],
    [15, 20, "loud"],
  ])("with gusts of %i are after %i minutes: %s", (gust, min, is) => expect(after(gust, min)).toBe(is));
});

describe("the wind that whoever watches reads", () => {
  const handedOver = (watchedBy: "watcher" | "deputy" = "watcher") => crewAt("open", { weatherPlan: { ...plan, watchedBy } });
  const state = ({ job }: Crew) => job.snapshot.context;
  const due = ({ job, at }: Crew) => readingDue(job.frozen.script.watch!, state({ job } as Crew), at)!;
  it("counts as the reading that was due", () => {
    const crew = handedOver();
    crew.at += 45 * MINUTE;
    expect(due(crew).is).toBe("loud");
    expect(crew.gust(8, "watcher")).toEqual({ did: "watched" });
    expect(due(crew)).toMatchObject({ is: "later", everyMin: 20 });
  });
  it("brings the next one sooner from three fifths of the limit on", () => {
    const crew = handedOver();
    crew.gust(9);
    crew.gust(18, "watcher");
    expect(due(crew).everyMin).toBe(10);
  });
  it("lets nobody in", () => {
    const crew = handedOver();
    crew.at += 45 * MINUTE;
    const before = missing(crew);
    crew.gust(8, "watcher");
    expect(missing(crew)).toEqual(before);
    expect(before).toMatchObject({ gate: "wind.use", status: "stale" });
  });
  it("ends no stop", () => {
    const crew = handedOver();
    crew.gust(40, "watcher");
    crew.gust(3, "watcher");
    expect(state(crew).wind).toMatchObject({ gustMph: 40 });
  });
  const level = ({ job }: Crew) => levelAt(job.frozen.script.watch!, state({ job } as Crew));
  const minutesAgo = (crew: Crew, gustMph: number, min: number) => {
    const takenAt = crew.at - min * MINUTE;
    const reading = { kind: "wind", mph: 4, gustMph, takenAt, fromDeg: null, place: null } as const;
    return crew.say({ type: "reading", reading }, "watcher");
  };
  /** Calm by the lead, calm by the watcher, then a crew member warns of four fifths of the limit. */
  const warnedAfterCalm = () => {
    const crew = handedOver();
    crew.gust(6);
    crew.at += 10 * MINUTE;
    crew.gust(8, "watcher");
    crew.at += 2 * MINUTE;
    crew.gust(14, "crew");
    return crew;
  };
  it("hides no later warning of somebody else", () => {
    const crew = warnedAfterCalm();
    expect([level(crew), due(crew).everyMin]).toEqual(["at80", 10]);
  });
  it("read before somebody's warning and told after it hides the warning neither", () => {
    const crew = handedOver();
    crew.gust(6);
    crew.at += 30 * MINUTE;
    crew.gust(14, "crew");
    minutesAgo(crew, 5, 20);
    expect([level(crew), due(crew).everyMin]).toEqual(["at80", 10]);
  });
  it("and a warning are over once somebody who may clear reads less", () => {
    const crew = warnedAfterCalm();
    crew.gust(5);
    expect([level(crew), due(crew).everyMin]).toEqual([null, 20]);
  });
  it("is not replaced by an older one", () => {
    const crew = handedOver();
    crew.gust(6);
    crew.at += 20 * MINUTE;
    crew.gust(9, "watcher");
    expect(minutesAgo(crew, 5, 15)).toMatchObject({ refused: [{ why: "olderReading" }] });
    expect(level(crew)).toBe("at60");
  });
  describe("in a trend", () => {
    const calmer = withWeather({ weatherPlan: plan });
    const brief = {
      ...calmer,
      use: { ...calmer.use, walls: false },
      sheet: { ...calmer.sheet, ...{ raiseGustMph: 30, stopGustMph: 40, insideGustMph: 38 } },
    };
    const rising = (role: "watcher" | "competent") => {
      const crew = new Crew(brief as typeof calmer).goTo("open");
      for (const gust of [9, 12, 15, 18, 21]) {
        crew.at += 5 * MINUTE;
        crew.gust(gust, role);
      }
      return crew;
    };
    const left = ({ job, at }: Crew) => timeLeft(job.frozen.script.watch!, job.snapshot.context, at);
    it.each(["watcher", "competent"] as const)("leaves less time where it rises, read by the %s", (role) =>
      expect(left(rising(role))).toMatchObject({ because: "trend" }),
    );
    it("takes no trend back that the others' readings make", () => {
      const crew = rising("competent");
      for (let n = 0; n < 31; n++) crew.gust(5, "watcher");
      expect(left(crew)).toMatchObject({ because: "trend" });
    });
  });
  it.each([
    ["of one whom the plan does not name", () => handedOver("deputy"), "watcher"],
    ["before the handover", () => crewAt("night.watch", { weatherPlan: plan }), "watcher"],
  ] as const)("is refused %s", (_, at, role) => expect(at().gust(8, role)).toMatchObject({ refused: [{ why: "role" }] }));
});

describe("the way down", () => {
  const down = (parts: WeatherParts) => crewAt("strike.people", parts).ready();
  it("is refused under a warning, with both times", () => {
    const crew = down({ weatherPlan: plan });
    warning(crew);
    expect(crew.next()).toMatchObject({ refused: [{ why: "gate", gate: "warning", tooLong: { needMin: 60, leftMin: 0 } }] });
  });
  it("is refused where the forecast leaves less than it takes", () => {
    const crew = down({ weatherPlan: plan, forecast: { ...forecast, clearBy: forecast.from } });
    crew.at = forecast.from - 25 * MINUTE;
    expect(missing(crew)).toMatchObject({ why: "tooLong", needMin: 60, leftMin: 24, because: "forecast" });
  });
  it("is open where there is time", () => expect(missing(down({ weatherPlan: plan }))).toBeNull());
  it("leaves making safe open whatever there is", () => {
    const crew = down({ weatherPlan: plan });
    warning(crew);
    expect(crew.say({ type: "makeSafe", because: null }, "crew")).toMatchObject({ did: "makingSafe" });
  });
});

describe("a change of the plan", () => {
  it("is looser with readings farther apart and less time to lower", () => {
    const from = freeze(withWeather({ weatherPlan: plan }));
    const to = freeze(withWeather({ weatherPlan: { ...plan, readEveryMin: 30, lowerMin: 30, clearMin: 25 } }));
    const looser = changesOf(from, to).flatMap((c) => (c.what === "fact" && c.looser ? [c.field] : []));
    expect(looser.sort()).toEqual(["weatherPlan.lowerMin", "weatherPlan.readEveryMin"]);
  });
});
