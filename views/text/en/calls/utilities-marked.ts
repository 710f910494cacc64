import type { CallTexts, WordParams } from "../../call-text.ts";
import { feetInches, utilityName } from "../names.ts";

const voltage = (of: WordParams) => (of.kv === "unknown" ? "voltage not known" : `${of.kv} kV`);
/** Above the table: no distance to measure against, only the owner's paper. */
const byPaper = (of: WordParams) => of.clearFt === "unknown";

export const utilitiesMarked: CallTexts = {
  "sheet.atHand": {
    say: (of) => `Take out the sheet for this tent, ${of.document}.`,
    ask: () => "Which sheet is in your hand?",
    why: "Stakes, ties and wind limits are this tent's own. Another tent's sheet is a guess.",
    wrong: "Somebody works from last week's sheet. The stakes are wrong, and nobody sees it until the wind finds them.",
    well: "Read the tag on the tent, then the head of the sheet, aloud. Same tent, same size, same issue, before the truck is emptied.",
    ifNot: "Get the right sheet before anything else. If it was reissued, amend the plan.",
  },
  "kit.loaded": {
    say: (of) => `Load the truck off the list: ${of.lines} lines. Used first goes on last.`,
    ask: () => "What is on the truck?",
    why: "What stays in the yard is an hour's drive away.",
    wrong:
      "Loaded from memory, by whoever got there first. The crew stands at the last corner, two plates short, and somebody ties off to a stake.",
    well: "One hands up, one on the truck counts aloud and ticks. Pieces in laying order, last one deepest; stakes and plates by the tailgate.",
    ifNot: "Load what is short, or leave it with a reason.",
  },
  "talk.hazards": {
    say: () => "Crew round. Go through today's hazards: lines, wind, poles, hammers.",
    ask: () => "Has everybody heard the hazards?",
    why: "Most people hurt at a raise did not see it coming.",
    wrong: "Said from the cab while the crew unloads. The new hand hears half of it, and walks under the first pole.",
    well: "Tools down, everybody in a ring. Point at each hazard where it is, and have the newest hand say it back.",
    ifNot: "Fetch who is missing and say it again.",
  },
  "talk.stopSignal": {
    say: () => "Agree the stop signal: voice and horn. This guide is not the stop signal.",
    ask: () => "Does everybody know the stop signal?",
    why: "A phone may be in a pocket. A shout and a horn are not.",
    wrong: "Everybody has a stop word of their own. Half the hands let go while the others still lift.",
    well: "Sound the horn, and see a hand go up at the far corner. Anybody may give it; nobody goes on until the lead says so.",
    ifNot: "Show it, sound it, ask again.",
  },
  "talk.rallyPoint": {
    say: (of) => `Muster at ${of.rallyPoint}. First aid: ${of.firstAid}. Address to give: ${of.address}.`,
    ask: () => "Can everybody say where to go and what address to give?",
    why: "An ambulance that cannot find the field is no help.",
    wrong: "Somebody is hurt, and nobody on the phone can say which gate. The ambulance drives past.",
    well: "Point at the muster place and the first aid box. Hear the address said back, and name who meets an ambulance at the gate.",
    ifNot: "Walk them there and say it again.",
  },
  "talk.headcount": {
    say: (of) => `Count heads. The plan has ${of.crew}.`,
    ask: () => "How many are here?",
    why: "You cannot find the one who is missing if you never counted.",
    wrong: "Counted from memory, with the driver in and the late one out. At the muster the number means nothing.",
    well: "Count faces, not jackets. Stand them still, point at each one, and say the number aloud.",
    ifNot: "Wait for them, or amend the crew with a second person.",
  },
  "locate.ticket": {
    say: (of) => `Take out the locate ticket, ${of.ticket}.`,
    ask: () => "Which ticket, and is it in force today?",
    why: "A driven stake is digging in most laws. No ticket, no stake.",
    wrong: "It is last week's ticket, or the one for the field next door. The first stake goes in on nobody's word.",
    well: "Read number, place and both dates off the ticket itself, not from memory. In any doubt, ring the one-call center.",
    ifNot: "Call it in, or renew it, and amend the ticket. Do not drive before it starts.",
  },
  "locate.covers": {
    say: (of) => `Hold the ticket's area against the ground, stake line included, ${feetInches(Number(of.setbackFt))} outside the poles.`,
    ask: () => "Does the ticket cover the whole stake line?",
    why: "The stakes stand outside the tent. A ticket for the tent alone misses them.",
    wrong: "The tent was moved a few paces after the call. The far stakes stand on ground that nobody was asked about.",
    well: "Walk the stake line with the ticket open, corner to corner. Match its words to what you see: road, fence, building.",
    ifNot: "Call in the rest. No stake outside the ticket.",
  },
  "locate.marked": {
    say: (of) => `Ticket: ${utilityName(of.utility)} has answered and marked its lines.`,
    ask: (of) => `Has ${utilityName(of.utility)} answered, and are its marks on the ground?`,
    why: "No answer is not an all-clear.",
    wrong: "There is paint on the grass, so all is taken as marked. One line has not been done yet, and a stake goes into it.",
    well: "Tick each name on the ticket against its answer, then find that one's own marks on the ground before you go on.",
    ifNot: "Call the one-call center. Wait for the answer.",
  },
  "locate.clear": {
    say: (of) => `Ticket: ${utilityName(of.utility)} has answered that it has nothing here.`,
    ask: (of) => `Is the answer of ${utilityName(of.utility)} in your hand: no lines here?`,
    why: "No answer is not an all-clear.",
    wrong: "Bare grass is read as clear. The locator was only late, and the line is there.",
    well: "Read the answer itself: who gave it, for which ticket, nothing here. A blank beside the name is not an answer.",
    ifNot: "Call the one-call center. If there is a line, amend the ticket.",
  },
  "marks.walked": {
    say: () => "Walk the marks with two people, flags and paint, to where they leave the site.",
    ask: () => "Have all marks been walked?",
    why: "Rain and mowers take marks away. Marks are approximate anyway.",
    wrong: "Somebody looks from the truck. A mower has moved a flag, and the stakes follow the flag.",
    well: "One on each side of the mark, eyes down, flag to flag. Where the next one should be and is not, stop there.",
    ifNot: "If a mark is gone or in doubt, stop and have it marked again.",
  },
  "private.asked": {
    say: (of) => `Ask the owner of the ground about ${of.line} lines. By name, to the face or by phone.`,
    ask: (of) => `Has the owner said where ${of.line} runs, or that there is none?`,
    why: "The utilities do not mark private lines.",
    wrong: "The gardener thinks not, and that is taken for a no. The stake goes through the feed to the pump.",
    well: "Walk the ground with whoever looks after it. Point at valve lids, lamps and covers, and ask what feeds each one.",
    ifNot: "Find somebody who knows, or have it located. Not known stays shut.",
  },
  "overhead.line": {
    say: (of) =>
      byPaper(of)
        ? `Overhead line ${of.line}, ${voltage(of)}. No table goes that high. The line's owner sets the distance.`
        : `Overhead line ${of.line}, ${voltage(of)}. Tape on the ground only, from under it to the nearest pole base.`,
    ask: (of) => (byPaper(of) ? "Whose paper says how far to stay off it?" : "How far, along the ground?"),
    why: "A falling pole reaches its own length. Treat every line as live.",
    wrong: "By eye it looks far enough. The pole sways on its way up, and the current jumps to it before it touches.",
    well: "Keep poles and ladders lying flat near it. Nobody reaches up to measure. Whatever is in doubt, the line's owner says.",
    ifNot: "Move the tent and amend, or show the line owner's paper for this place.",
  },
  "overhead.any": {
    say: (of) =>
      `Look up. Measure to the nearest overhead line, if there is one: pole ${feetInches(Number(of.poleFt))} and ${of.clearFt} ft clear.`,
    ask: () => "How far to the nearest line along the ground, or none?",
    why: "A falling pole reaches its own length. Treat every line as live.",
    wrong: "Eyes are on the grass all morning. The wire behind the trees is seen when the pole is halfway up.",
    well: "Turn right round, head up: trees, roofs, wires to the house. Tape on the ground only. Its owner alone says it is dead.",
    ifNot: "Move the tent and amend, or show the line owner's paper that it is dead and grounded here.",
  },
  "white.footprint": {
    say: () => "Lay out the footprint in white, and only white.",
    why: "Every other color means a buried line to the next one who digs.",
    wrong: "Whatever can is on the truck gets used. Somebody later takes our tent for a line, or a line for our tent.",
    well: "Read the can before you shake it. Short dashes close to the grass, and never over a mark that is already there.",
  },
  "white.stakeLine": {
    say: (of) => `Lay out the stake line in white, ${feetInches(Number(of.setbackFt))} outside the poles.`,
    ask: () => "Is the whole stake line down in white?",
    why: "The distance to a line is measured from where the stakes will stand.",
    wrong: "Only the corners get sprayed. Between them the stakes swing out toward a buried line, and nobody measured there.",
    well: "Two on the tape, square out from the footprint at each corner. Then a string from end to end, and dashes along it.",
    ifNot: "Finish it. Guessing from the footprint is not enough.",
  },
  "nearest.mark": {
    say: (of) => `Measure from the ${utilityName(of.utility)} marks to the nearest stake mark.`,
    ask: () => "How far is the nearest one?",
    why: "Lines lie off their marks. Inside the zone no stake is driven.",
    wrong: "They measure at the stake they come to first. The closest one, round the corner, goes in on top of the line.",
    well: "Walk the mark to find the closest spot. Tape from the near edge of the paint. In doubt leave it, and ask the line's owner.",
    ifNot: "Move the stake and amend. Or the line's owner exposes it, and their paper says where you may drive.",
  },
  "nearest.private": {
    say: () => "Measure from the nearest private line to the nearest stake mark, if there is one.",
    ask: () => "How far is it, or none?",
    why: "A cut irrigation or lighting line hurts as well.",
    wrong: "Lamps and sprinkler heads are not seen as lines. A stake goes through the pipe between them.",
    well: "Stand at a lamp or a valve and look for the next one: the line may lie anywhere between. Not sure, have it located.",
    ifNot: "Move the stake and amend, or show the site owner's paper.",
  },
};
