import type { CallTexts, WordParams } from "../../call-text.ts";
import { feetInches, utilityName } from "../names.ts";
import { neighborName, offsetText, placesText } from "../worked-out.ts";

const voltage = (of: WordParams) => (of.kv === "unknown" ? "voltage unknown" : `${of.kv} kV`);
const capital = (text: string) => text.replace(/^./, (first) => first.toUpperCase());
/** A name as it was entered, as much of it as there is room for in words. */
function cut(name: string, room: number): string {
  const words = name.trim().split(/\s+/);
  return words.length <= room
    ? name
    : `${words
        .slice(0, room)
        .join(" ")
        .replace(/[.,;:]+$/, "")}\u2026`;
}
/** As it was entered on the site, or by its number. */
const lineName = (of: WordParams, room: number) =>
  of.name === undefined ? `Overhead line ${of.line}` : capital(cut(String(of.name), room));
/** Lines by their names, where there is room for all of them. */
const linesNamed = (lines: WordParams[string] | undefined, room: number) => {
  const names = String(lines ?? "");
  return names.includes(", ") && names.split(/\s+/).length > room ? "all its lines" : cut(names, room);
};
/** Above the table: no distance to measure against, only the owner's paper. */
const byPaper = (of: WordParams) => of.clearFt === "unknown";

/** Stations and poles of a call by their codes, as many as there is room for. */
const places = (codes: WordParams[string] | undefined, room: number) => placesText(String(codes ?? "").split(" "), room);
const many = (codes: WordParams[string] | undefined) => String(codes ?? "").includes(" ");
const NO_OTHER_WAY = "Move the tent, or correct the line if it was entered wrong. A second person agrees.";

export const utilitiesMarked: CallTexts = {
  "sheet.atHand": {
    say: () => "Get out the sheet for this tent. Read number and revision.",
    ask: () => "Which sheet is it?",
    why: "Stakes, ties and wind limits belong to this tent. Another tent's sheet is a guess.",
    wrong: "Somebody works off last week's sheet. The stakes are wrong, and nobody finds out until it blows.",
    well: "Read the tag on the tent, then the top of the sheet, out loud. Same tent, same size, same revision, before anything comes off the truck.",
    ifNot: "Get the right sheet first. If it was reissued, change the plan.",
  },
  "sheet.unknown": {
    say: () => "Nobody has this tent's sheet yet. Get it, and fill in what it says.",
    ask: () => "What does the sheet say?",
    why: "Stakes, depth and wind limits come off the sheet. Without it nobody knows if it holds.",
    wrong: "The crew goes by the last tent of that size. This one wants longer stakes, and the first gust pulls the short ones.",
    well: "Call the yard or the maker with the number on the tent's tag. Read every figure back to them.",
    ifNot: "Fill it in here. A second person agrees, and it goes on.",
  },
  permit: {
    say: () => "Get out the permit.",
    ask: () => "What's the permit number?",
    why: "The fire official asks for it first. Better to hear no before the first stake than after.",
    wrong: "The permit sits in a drawer at the office. The official is at the gate, the tent is up, and so are the guests.",
    well: "Read it when you get it: this place, these dates, this tent. Keep it dry and with the lead, not in the truck.",
    ifNot: "No stake goes in. Get it, or the fire official's paper.",
  },
  "permit.unknown": {
    say: () => "Nobody has said if this needs a permit. Ask the fire official.",
    ask: () => "What's the permit number?",
    why: "Don't know counts as needed.",
    wrong: "Everybody thinks somebody else asked. It comes out with the tent up and the guests on their way.",
    well: "Call them yourself with size, place, dates and headcount. Write down who answered, and ask for it in writing.",
    ifNot: "Get it, or the fire official's paper that none is needed, or change the plan.",
  },
  certificate: {
    say: () => "Get out the fabric certificate for this top.",
    ask: () => "What's the certificate number?",
    why: "It shows that this cloth resists flame.",
    wrong: "It's for a top the same size, not for this one. The label doesn't match, and the doors stay shut.",
    well: "Read the number off the label on the cloth, then off the certificate, panel by panel. No label: ask today, not on opening day.",
    ifNot: "Nobody goes under it without one. Get it, or the fire official's paper.",
  },
  "certificate.unknown": {
    say: () => "Nobody has said if it needs a fabric certificate. Ask the fire official.",
    ask: () => "What's the certificate number?",
    why: "Don't know counts as needed, here too.",
    wrong: "It's left for the customer to worry about. On opening day somebody asks, and nobody has it.",
    well: "Call while you stand at the label on the cloth. Read out what it says, and write down the name and the answer.",
    ifNot: "Get it, or the fire official's paper that none is needed, or change the plan.",
  },
  "kit.loaded": {
    say: () => "Load the truck off the list. First used goes on last.",
    ask: () => "What's on the truck?",
    why: "What stays in the yard is an hour away when you need it.",
    wrong: "Loaded from memory by whoever got there first. At the last corner the crew is short on plates, and ties off to a bare stake.",
    well: "One hands up, one on the truck counts out loud and checks it off. Panels in laying order, last one deepest; stakes and plates by the tailgate.",
    ifNot: "Load what's short, or leave it with a reason.",
  },
  "talk.hazards": {
    say: () => "Bring it in. Today's hazards: buried lines, wires, wind, poles, drivers, heat.",
    why: "Most people hurt at a raise never saw it coming.",
    wrong: "Said from the cab while the crew unloads. The new hand hears half of it, and walks under the first pole.",
    well: "Tools down, everybody in a circle. Point at each hazard where it is. Hot day: water and shade. Have the newest hand say it all back.",
  },
  "talk.stopSignal": {
    say: () => "Stop signal: voice and horn. Never this phone.",
    why: "A phone may be in a pocket. A shout and a horn never are.",
    wrong: "Everybody has a stop word of their own. Half the hands let go while the others still lift.",
    well: "Sound the horn and look for a raised hand at the far corner. Show the hand signal too. Anybody stops it; only the lead starts it again.",
  },
  "talk.rallyPoint": {
    say: (of) => `Rally point: ${of.rallyPoint}. Storm shelter: ${of.stormShelter}.`,
    why: "People who run every which way can't be counted. No tree and no tent is a shelter.",
    wrong: "One place is named for everything. In the lightning the crew stands under the one tree in the field.",
    well: "Point at both and have somebody walk to each. Rally point to be counted; in thunder or a storm, the building or the hard-topped vehicle.",
  },
  "talk.firstAid": {
    say: (of) => `First aid: ${of.firstAid}. Address: ${of.address}.`,
    why: "An ambulance that can't find the field is no help.",
    wrong: "Somebody is hurt, and nobody on the phone can say which gate. The ambulance drives right by.",
    well: "Open the box and look in it. Hear the address said back, and name who meets the ambulance at the gate.",
  },
  "places.unknown": {
    say: (of) =>
      `Rally point: ${of.rallyPoint ?? "not known"}. Storm shelter: ${of.stormShelter ?? "not known"}. First aid: ${of.firstAid ?? "not known"}.`,
    ask: () => "Where are they?",
    why: "When it happens there's no time to look for a place.",
    wrong: "Everybody nods, and nobody knows where to. In the lightning they run for the nearest tree.",
    well: "Walk to each one before you name it. The shelter is a building or a hard-topped vehicle, open now. The box is full, and not locked.",
    ifNot: "Fill it in here. A second person agrees, and it goes on.",
  },
  "talk.briefed": {
    say: () => "Crew talk: hazards, stop signal, rally point, storm shelter, first aid, address.",
    ask: () => "Everybody here today briefed?",
    why: "Whoever missed the talk is the one who walks under the pole.",
    wrong: "Two came late and one came back from the yard. They nod along, and nobody told them which way is out.",
    well: "Ask one each: where do you go, who stops it, what's the address? A wrong answer gets the whole talk again. New day, new talk.",
    ifNot: "Bring in whoever missed it and go through it again.",
  },
  "talk.headcount": {
    say: () => "Stand still. Count heads.",
    ask: () => "How many on the crew are here?",
    why: "You can't miss somebody you never counted.",
    wrong: "Counted from memory, with the driver in and the late one out. At the rally point the number means nothing.",
    well: "Count faces, not vests. Stand them still, point at each one, and say the number out loud.",
    ifNot: "Wait for them, or change the crew with a second person.",
  },
  "white.cornerA": {
    say: (of) => `Mark corner A: ${offsetText(Number(of.alongIn) / 12, Number(of.offIn) / 12)}.`,
    why: "The lines were taped off the site's baseline. Off another one, no clearance is what it says.",
    wrong: "A goes where it looked good from the truck. The whole tent is a few steps over, and a row of stakes is on the gas line.",
    well: "Find the pins of the site's baseline first. Tape along it to the figure, square out from there, and stand where the drawing has A. Looks wrong: stop and ask.",
  },
  "white.cornerB": {
    say: (of) => `Mark corner B: ${offsetText(Number(of.alongIn) / 12, Number(of.offIn) / 12)}.`,
    ask: () => "A and B marked, off the site's baseline?",
    why: "A alone lets the tent turn. A and B together are the place that was worked out.",
    wrong: "B is set by eye along the fence. The fence isn't square to anything, and the far stakes land on the line.",
    well: "Tape it off the baseline just like A, never from A. Then A to B has to be the length of that side; if it isn't, one of the two is off.",
    ifNot: "Tape both again off the site's baseline. Place wrong: change it, and a second person agrees.",
  },
  "white.footprint": {
    say: ({ inside }) =>
      Number(inside) > 0 ? "White paint only: the footprint, and a dot for every inside stake." : "Mark the footprint. White paint only.",
    why: "Every other color means a buried line to the next one who digs.",
    wrong: "Only the outside gets marked and measured. The irrigation main runs right down the middle of the tent.",
    well: "Short dashes, never over a mark that's there. Then the ridge and the quarter rows off the plan: a dot for each plate, and one for its stake. Nothing wider than a hand.",
  },
  "white.stakeLine": {
    say: (of) => `Mark the stake line in white, ${feetInches(Number(of.setbackFt))} outside the poles.`,
    ask: () => "All in white: footprint, dots, stake line?",
    why: "Distance to a buried line is measured from where the stakes will stand.",
    wrong: "Only the corners get sprayed. Between them the stakes swing out toward a buried line, and nobody measured there.",
    well: "Two on one tape, square out from the footprint at each corner. String from end to end, then dashes. On a slope, tape level and plumb bob.",
    ifNot: "Finish it. Guessing from the footprint isn't enough.",
  },
  "locate.ticket": {
    say: () => "Get out the locate ticket. Read the number and both dates.",
    ask: () => "Which locate ticket is in force today?",
    why: "Driving a stake is digging under most locate laws. No ticket, no stake.",
    wrong: "It's last week's ticket, or the one for the field next door. The first stake goes in on nobody's word.",
    well: "Read number, place and both dates off the ticket itself, not from memory. Any doubt: call the one-call center.",
    ifNot: "Call it in or renew it, and update the ticket here. No driving until it starts.",
  },
  "ticket.unknown": {
    say: () => "There is no locate ticket yet. Call the one-call center.",
    ask: () => "What does the ticket say?",
    why: "Driving a stake is digging under most locate laws. No ticket, no stake.",
    wrong: "Somebody says it was called in. It was the field next door, and the first stake finds the gas.",
    well: "Call it in for the whole stake line, inside marks too. Write down the number, both dates, and each name they read out.",
    ifNot: "Fill it in here once you have it. A second person agrees, and it goes on.",
  },
  "locate.covers": {
    say: () => "Walk the stake line with the ticket.",
    ask: () => "Does the ticket cover all of it?",
    why: "Stakes stand outside the tent and inside it. A ticket for the footprint alone misses some.",
    wrong: "The tent moved a few paces after the call. The far stakes stand on ground that nobody was asked about.",
    well: "Ticket open, corner to corner, then across the inside marks. Match its words to what you see: road, fence, building.",
    ifNot: "Call in the rest. No stake outside the ticket.",
  },
  "locate.answers": {
    say: () => "Read the ticket, name by name.",
    ask: () => "Each one: answered, marked or clear?",
    why: "No answer is not an all clear.",
    wrong: "There's paint on the grass, so everything is taken as marked. One locator is running late, and a stake goes into that line.",
    well: "Name by name: find that one's paint, or read its all clear for this ticket. A blank beside the name is a no.",
    ifNot: "Call the one-call center and wait. If what you have differs, update the ticket here.",
  },
  "marks.walked": {
    say: () => "Two people: walk all the locate paint and flags.",
    ask: () => "All paint and flags clear to see?",
    why: "Rain and mowers take marks away, and a mark is only close to its line anyway.",
    wrong: "Somebody looks from the truck. A mower has moved a flag, and the stakes follow the flag.",
    well: "One on each side of the mark, eyes down, flag to flag. Where the next one should be and isn't, stop right there.",
    ifNot: "A mark gone or in doubt: stop and have it marked again.",
  },
  "private.lines": {
    say: () => "Ask the property owner: irrigation, lighting, septic.",
    ask: () => "Located or ruled out? Each one by name.",
    why: "Locators don't mark private lines. Only the owner knows.",
    wrong: "The gardener doesn't think so, and that's taken for a no. The stake goes through the feed to the pump.",
    well: "Walk it with whoever looks after the ground. Point at valve lids, lamps and covers and ask what feeds them. Propane, data, pool lines too.",
    ifNot: "Find somebody who knows, or have it located. Don't know stays a no.",
  },
  "overhead.line": {
    say: (of) =>
      byPaper(of)
        ? `${lineName(of, 3)}, ${voltage(of)}: off the table. Only its owner sets the distance.`
        : `${lineName(of, 4)}, ${voltage(of)}. Tape on the ground, to the nearest pole.`,
    ask: (of) => (byPaper(of) ? "Whose paper sets the distance?" : "How far, along the ground?"),
    why: "A falling pole reaches its own length. Treat every wire as live.",
    wrong: "By eye it looks far enough. The pole sways on its way up, and the current jumps before it ever touches.",
    well: "From straight under the wire, cloth tape flat on the ground. Poles and ladders lie flat near it, and nobody reaches up to measure.",
    ifNot: "Move the tent and change the plan, or get the line owner's paper for this place.",
  },
  "overhead.wire": {
    say: (of) => `${lineName(of, 3)}, ${voltage(of)}. Tape to the nearest side pole, and inside pole.`,
    ask: () => "How far along the ground: side pole, inside pole?",
    why: "A falling pole reaches its own length, and inside poles are the long ones. Treat every wire as live.",
    wrong:
      "They tape to the pole that the screen would name. The wire was entered on the wrong side, and the near poles were never looked at.",
    well: "From straight under the wire, cloth tape flat on the ground. Walk along it to find the nearest of each; poles and ladders lie flat near it.",
    ifNot: "Move the tent and change the plan, or get the line owner's paper for this place.",
  },
  "overhead.any": {
    say: () => "Look up for wires, all around.",
    ask: () => "Nearest wire: how far along the ground, or none?",
    none: "No wires at all? Look all around once more.",
    why: "A falling pole reaches its own length, and current jumps. Treat every wire as live.",
    wrong: "Eyes are on the grass all morning. The wire behind the trees is spotted with the pole halfway up.",
    well: "Turn all the way around, head up: trees, roofs, drops to the house. Tape on the ground only. Its owner alone can say that it's dead.",
    ifNot: "Move the tent and change the plan, or get the line owner's paper: dead and grounded here.",
  },
  "nearest.mark": {
    say: (of) =>
      of.stakes === undefined
        ? `Tape from the ${utilityName(of.utility)} paint to the nearest white dot or line.`
        : `${capital(utilityName(of.utility))} paint: tape to ${places(of.stakes, 2)}. Worked out: ${of.computedIn} in.`,
    ask: () => "How far is the nearest one?",
    why: "Lines lie off their paint, and stakes off their marks. Nothing gets driven inside the zone.",
    wrong: "They tape to the stake they come to first. The closest one, around the corner, goes in on top of the line.",
    well: "Walk the paint to find the closest mark, inside stakes too. Tape from the near edge of the paint. Doubt: leave it, and ask the line's owner.",
    ifNot: "Move the stake, change the plan. Or the owner exposes the line and signs a paper for the spot.",
  },
  "nearest.private": {
    say: () => "Tape from the nearest private line to the nearest white dot or line.",
    ask: () => "How far is it, or none?",
    none: "No private lines at all?",
    why: "A cut irrigation or lighting line hurts people too.",
    wrong: "Nobody thinks of lamps and sprinkler heads as lines. A stake goes through the pipe between them.",
    well: "Stand at a lamp or a valve and look for the next one: the line may run anywhere between. Not sure: have it located.",
    ifNot: "Move the stake and change the plan, or get the site owner's paper.",
  },
  "clear.around": {
    say: () => "Tape from the stake line to the nearest building, vehicle or engine.",
    ask: () => "How far is it, or none?",
    none: "No building, vehicle or engine near at all?",
    why: "Fire jumps short gaps and trucks need room. The fire code counts stakes and ropes too.",
    wrong: "The tent was placed by the view. The generator and the catering van back up against the stake line, and there they stay.",
    well: "Walk all the way around. Ask where the generator, the kitchen and the cars will be tonight, not just where they are now.",
    ifNot: "Move it, or move the tent and change the plan, or get the fire official's paper.",
  },
  "nearest.entered": {
    say: (of) => `${capital(neighborName(of.kind))} line: tape to ${places(of.stakes, 2)}. Worked out: ${of.computedIn} in.`,
    ask: () => "How far is the nearest one?",
    why: "What was worked out is only as good as what was entered. The tape is what counts.",
    wrong: "The figure on the screen looks fine, so nobody tapes. The line was entered one flag off, and the stake goes in on top of it.",
    well: "Find the line on the ground first, then tape to each of the stakes named. Nearer than worked out: stop, and correct the line.",
    ifNot: "Move the stake and change the plan, or get the site owner's paper.",
  },
  "site.stakes": {
    say: (of) =>
      `${places(of.of, 2)} ${many(of.of) ? "stand" : "stands"} in the ${neighborName(of.kind)} zone: ${of.distance} in, ${of.wanted} needed.`,
    ask: () => "Move the tent, or is the line wrong?",
    why: "A stake in the zone may go into the line. No paper makes the ground safe there.",
    wrong: "Somebody says the line is deep enough. It isn't, and the stake goes right through it.",
    well: "Look at the drawing with the paint in view. Line wrong: tape it again and correct it. Line right: the tent moves.",
    ifNot: NO_OTHER_WAY,
  },
  "site.poles": {
    say: (of) =>
      `${many(of.of) ? "Poles" : "Pole"} ${places(of.of, 2)} ${many(of.of) ? "reach" : "reaches"} the overhead line: ${of.distance} ft, ${of.wanted} needed.`,
    ask: () => "Move the tent, or is the line wrong?",
    why: "A falling pole reaches its own length, and current jumps the rest.",
    wrong: "The wire is high, so the pole goes up beside it. A rope slips, and the pole comes down across it.",
    well: "Stand under the wire and tape to the nearest pole's mark. Wire entered wrong: correct it. Wire right: the tent moves.",
    ifNot: NO_OTHER_WAY,
  },
  "site.cloth": {
    say: (of) =>
      of.kind === "ground"
        ? "Ropes or cloth reach past the ground that you may use."
        : `Ropes or cloth too near the ${neighborName(of.kind)}: ${of.distance} ft, ${of.wanted} needed.`,
    ask: () => "Move the tent, or was it entered wrong?",
    why: "Fire jumps short gaps, trucks need room, and an exit with ropes across it is no exit.",
    wrong: "The truck will move later, they say. It stays, and nobody gets past the ropes with a stretcher.",
    well: "Tape from the outermost stake, not from the cloth. Entered wrong: correct it. Entered right: the tent moves, or the thing does.",
    ifNot: "Move the tent, or correct what was entered. A second person agrees.",
  },
  "site.ticket": {
    say: (of) => `${places(of.of, 2)} ${many(of.of) ? "stand" : "stands"} outside the ticket's area. Call it in again.`,
    ask: () => "What area does the ticket name now?",
    why: "Nobody was asked what lies under that ground.",
    wrong: "The tent moves ten feet for the view, and the ticket stays as it was. Those stakes go in blind.",
    well: "Open the ticket again for the ground outside, wait for the marks, then change the area in the plan.",
    ifNot: "Open the ticket again and change its area here, or move the tent back. A second person agrees.",
  },
  "site.clear": {
    say: () => "Nothing entered is too near. Not counted: lines nobody entered, depth, sway.",
    why: "It is a check of what was entered, and no more. What you measure counts.",
    wrong: "The screen says nothing is near, so nobody walks the paint. The one line that nobody entered is the one they hit.",
    well: "Look at the drawing and then at the ground. A flag that isn't on the drawing: say what you found, with where it runs.",
  },
  "anchor.exposed": {
    say: (of) => `${places(of.stake, 1)}: an engineer's anchor. First expose ${linesNamed(of.lines, 3)} by hand.`,
    ask: () => "Exposed by hand, and in sight?",
    why: "Only a line that you see is where you think it is.",
    wrong: "It must be a shovel's width away, they figure. The anchor finds it.",
    well: "Dig by hand or by vacuum, with the line's owner told. Leave it open until the anchor is in.",
    ifNot: "Nothing goes in here. Expose it, or move the tent.",
  },
  "anchor.paper": {
    say: (of) => `${places(of.stake, 1)}: get out the engineer's paper for this anchor.`,
    ask: () => "Whose paper is it?",
    why: "A stake in dug ground holds nothing. What holds there is for an engineer to say.",
    wrong: "A bigger stake in the open hole looks solid. It lifts out at the first gust.",
    well: "Read place, anchor and load off the paper, and match them to this corner before anything is set.",
    ifNot: "No anchor here without it. Get the paper, or move the tent.",
  },
};
