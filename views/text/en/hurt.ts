/** More than this in one breath is not heard on a site. */
const MAX_SPOKEN_WORDS = 20;

/** The number that help comes by. */
const EMERGENCY = "911";

/** Somebody is hurt: what to do, on every page of the job until the lead says what became of it. */
export const hurt = {
  title: `HURT: CALL ${EMERGENCY}`,
  /** What a press on that calls. */
  number: EMERGENCY,
  toldBy: (name: string, time: string) => `${name} told it at ${time}.`,
  meet: (name: string) => `${name}: meet the ambulance at the road.`,
  somebodyMeet: "One of you: meet the ambulance at the road.",
  firstAid: "First aid:",
  rally: "Rally point:",
  notKnown: "not known: ask the lead",
  rehearsal: "Rehearsal. Call only if somebody really is hurt.",
  press: "Somebody's hurt",
  who: "Somebody's hurt. Who's reporting it?",
  became: "What became of it?",
  /** Said aloud at once. The address comes whole, whatever else there is room for. */
  reply: (address: string, firstAid: string | null) => {
    const must = `HOLD. Call ${EMERGENCY}: ${ended(address)}`;
    const all = `${must} First aid: ${ended(firstAid ?? "not known, ask the lead")}`;
    return all.split(/\s+/).length <= MAX_SPOKEN_WORDS ? all : must;
  },
} as const;

const ended = (place: string): string => (/[.!?]$/.test(place) ? place : `${place}.`);
