import { feetInches, utilityName } from "../names.ts";
import type { Of, Words } from "../words.ts";

const voltage = (of: Of) => (of.kv === "unknown" ? "voltage not known" : `${of.kv} kV`);
/** Above the table: no distance to measure against, only the owner's paper. */
const byPaper = (of: Of) => of.clearFt === "unknown";

export const utilitiesMarked: Words = {
  "sheet.atHand": {
    say: (of) => `Take out the sheet for this tent, ${of.document}.`,
    ask: () => "Which sheet is in your hand?",
    why: "Stakes, ties and wind limits are this tent's own. Another tent's sheet is a guess.",
    ifNot: "Get the right sheet before anything else. If it was reissued, amend the plan.",
  },
  "talk.hazards": {
    say: () => "Crew round. Go through today's hazards: lines, wind, poles, hammers.",
    ask: () => "Has everybody heard the hazards?",
    why: "Most people hurt at a raise did not see it coming.",
    ifNot: "Fetch who is missing and say it again.",
  },
  "talk.stopSignal": {
    say: () => "Agree the stop signal: voice and horn. This guide is not the stop signal.",
    ask: () => "Does everybody know the stop signal?",
    why: "A phone may be in a pocket. A shout and a horn are not.",
    ifNot: "Show it, sound it, ask again.",
  },
  "talk.muster": {
    say: (of) => `Muster at ${of.muster}. First aid: ${of.firstAid}. Address to give: ${of.address}.`,
    ask: () => "Can everybody say where to go and what address to give?",
    why: "An ambulance that cannot find the field is no help.",
    ifNot: "Walk them there and say it again.",
  },
  "talk.headcount": {
    say: (of) => `Count heads. The plan has ${of.crew}.`,
    ask: () => "How many are here?",
    why: "You cannot find the one who is missing if you never counted.",
    ifNot: "Wait for them, or amend the crew with a second person.",
  },
  "locate.ticket": {
    say: (of) => `Take out the locate ticket, ${of.ticket}.`,
    ask: () => "Which ticket, and is it in force today?",
    why: "A driven stake is digging in most laws. No ticket, no stake.",
    ifNot: "Call it in, or renew it, and amend the ticket. Do not drive before it starts.",
  },
  "locate.covers": {
    say: (of) => `Hold the ticket's area against the ground, stake line included, ${feetInches(Number(of.setbackFt))} outside the poles.`,
    ask: () => "Does the ticket cover the whole stake line?",
    why: "The stakes stand outside the tent. A ticket for the tent alone misses them.",
    ifNot: "Call in the rest. No stake outside the ticket.",
  },
  "locate.marked": {
    say: (of) => `Ticket: ${utilityName(of.utility)} has answered and marked its lines.`,
    ask: (of) => `Has ${utilityName(of.utility)} answered, and are its marks on the ground?`,
    why: "No answer is not an all-clear.",
    ifNot: "Call the one-call centre. Wait for the answer.",
  },
  "locate.clear": {
    say: (of) => `Ticket: ${utilityName(of.utility)} has answered that it has nothing here.`,
    ask: (of) => `Is the answer of ${utilityName(of.utility)} in your hand: no lines here?`,
    why: "No answer is not an all-clear.",
    ifNot: "Call the one-call centre. If there is a line, amend the ticket.",
  },
  "marks.walked": {
    say: () => "Walk the marks with two people, flags and paint, to where they leave the site.",
    ask: () => "Have all marks been walked?",
    why: "Rain and mowers take marks away. Marks are approximate anyway.",
    ifNot: "If a mark is gone or in doubt, stop and have it marked again.",
  },
  "private.asked": {
    say: (of) => `Ask the owner of the ground about ${of.line} lines. By name, to the face or by phone.`,
    ask: (of) => `Has the owner said where ${of.line} runs, or that there is none?`,
    why: "The utilities do not mark private lines.",
    ifNot: "Find somebody who knows, or have it located. Not known stays shut.",
  },
  "overhead.line": {
    say: (of) =>
      byPaper(of)
        ? `Overhead line ${of.line}, ${voltage(of)}. No table goes that high. The line's owner sets the distance.`
        : `Overhead line ${of.line}, ${voltage(of)}. Tape on the ground only, from under it to the nearest pole base.`,
    ask: (of) => (byPaper(of) ? "Whose paper says how far to stay off it?" : "How far, along the ground?"),
    why: "A falling pole reaches its own length. Treat every line as live.",
    ifNot: "Move the tent and amend, or show the line owner's paper for this place.",
  },
  "overhead.any": {
    say: (of) =>
      `Look up. Measure to the nearest overhead line, if there is one: pole ${feetInches(Number(of.poleFt))} and ${of.clearFt} ft clear.`,
    ask: () => "How far to the nearest line along the ground, or none?",
    why: "A falling pole reaches its own length. Treat every line as live.",
    ifNot: "Move the tent and amend, or show the line owner's paper that it is dead and grounded here.",
  },
  "white.footprint": {
    say: () => "Lay out the footprint in white, and only white.",
    why: "Every other colour means a buried line to the next one who digs.",
  },
  "white.stakeLine": {
    say: (of) => `Lay out the stake line in white, ${feetInches(Number(of.setbackFt))} outside the poles.`,
    ask: () => "Is the whole stake line down in white?",
    why: "The distance to a line is measured from where the stakes will stand.",
    ifNot: "Finish it. Guessing from the footprint is not enough.",
  },
  "nearest.mark": {
    say: (of) => `Measure from the ${utilityName(of.utility)} marks to the nearest stake mark.`,
    ask: () => "How far is the nearest one?",
    why: "Lines lie off their marks. Inside the zone no stake is driven.",
    ifNot: "Move the stake and amend. Or the line's owner exposes it, and their paper says where you may drive.",
  },
  "nearest.private": {
    say: () => "Measure from the nearest private line to the nearest stake mark, if there is one.",
    ask: () => "How far is it, or none?",
    why: "A cut irrigation or lighting line hurts as well.",
    ifNot: "Move the stake and amend, or show the site owner's paper.",
  },
};
