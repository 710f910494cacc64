import type { Brief } from "./brief.ts";
import { knownOf } from "./facts.ts";
import { COMPETENT, type Gate, gate, noneOf, yes } from "./gates.ts";
import type { GateId } from "./ids.ts";
import type { Limits } from "./limits.ts";
import { type Condition, type Step, WORKS, type Work } from "./step.ts";
import { AGREED, WARNING } from "./weather.ts";

type During = Pick<Condition, "over" | "notIn">;
const ALL: During = { over: WORKS };
const ALOFT: During = { over: ["lift", "under", "ease", "lower"] };
/** Whoever goes under also drives that line's stakes: no pole is stood that could not be tied. In a strike nothing is driven. */
const STAKES: During = { over: ["driving", "under"], notIn: "struck" };
type WindLimit = Limits["raiseGustMph"] & { readonly agreed?: GateId };

/**
 * What each kind of work needs for as long as it lasts, in the order in which it is asked. Some are the gates of calls: the
 * talk, the ticket and the wind plan are asked where they come, and again wherever they are missing.
 */
export function conditionsOf({ weatherPlan, ticket }: Brief, steps: readonly Step[], limits: Limits): Condition[] {
  const { raiseGustMph, stopGustMph, insideGustMph, windLiftingS, windOtherwiseS, warningS, dayS } = limits;
  const wind = (id: string, over: readonly Work[], { is, source, ...agreed }: WindLimit, validForS: number): Condition => ({
    over,
    wordsKey: "wind",
    params: { belowMph: is },
    gate: {
      id,
      ...gate({ kind: "wind", belowMph: is, ...agreed }, { source, roles: COMPETENT, validForS, reopenedBy: ["sheet"] }),
    },
  });
  const told = (id: string, during: During, declared: Partial<Gate>): Condition => ({
    ...during,
    wordsKey: id,
    params: knownOf({ ticket: ticket?.number ?? null }),
    gate: { id, ...gate(yes, { roles: COMPETENT, ...declared }) },
  });
  /** The gate of a call, asked again over the work that needs it. */
  const asked = (id: string, during: During): Condition => {
    const { gate: own, wordsKey, params } = steps.find((s) => s.gate?.id === id)!;
    return { ...during, wordsKey, params, gate: own! };
  };
  // The lower of the two keeps the tent closed.
  const inside: WindLimit = { ...(insideGustMph.is < stopGustMph.is ? insideGustMph : stopGustMph), agreed: AGREED.evacuate };
  const survey: Condition = {
    over: ["use"],
    wordsKey: "survey",
    params: {},
    gate: { id: "survey", ...gate(noneOf, { roles: COMPETENT, dormant: true, reopenedBy: ["clearing"] }) },
  };
  const session = { session: true, validForS: dayS.is };
  return [
    {
      ...ALL,
      wordsKey: "thunder",
      params: {},
      gate: { id: "thunder", ...gate({ kind: "quiet" }, { source: limits.thunderS.source, roles: COMPETENT }) },
    },
    told(WARNING, { over: ["openCloth", ...ALOFT.over, "use"] }, { validForS: warningS.is }),
    asked("talk.briefed", ALL),
    asked("talk.headcount", ALL),
    asked("locate.ticket", STAKES),
    // Not for going under: marks and dots inside were checked on bare ground, and nobody can see them under the cloth.
    told("paint", { over: ["driving"] }, { validForS: dayS.is, reopenedBy: ["ticket", "rain"] }),
    told("earsAndEyes", STAKES, session),
    told("hats", ALOFT, session),
    told("caller", ALOFT, { ...session, reopenedBy: ["crew"] }),
    told("wayOut", ALOFT, session),
    asked("under.hands", { over: ["under"] }),
    asked(AGREED.evacuate, { over: ["use"] }),
    // Last, so that it is as fresh as it can be.
    wind("wind.cloth", ["openCloth"], raiseGustMph, windOtherwiseS.is),
    // Straps are eased only in wind in which a crew may then go under.
    wind("wind.lift", ["lift", "under", "ease"], raiseGustMph, windLiftingS.is),
    wind("wind.lower", ["lower"], stopGustMph, windLiftingS.is),
    wind("wind.use", ["use"], inside, windOtherwiseS.is),
    // After everybody was sent out the tent is walked from outside before anybody goes back in. A blow asks for its rounds by itself.
    ...(weatherPlan ? [survey] : []),
    // While it blows nobody is sent to look: the wind comes first.
    {
      over: ["openCloth", ...ALOFT.over],
      wordsKey: "afterBlow",
      params: {},
      gate: { id: "afterBlow", ...gate(noneOf, { roles: COMPETENT, dormant: true, reopenedBy: ["blow", "rain"] }) },
    },
  ];
}
