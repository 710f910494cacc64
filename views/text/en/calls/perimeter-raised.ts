import type { CallTexts } from "../../call-text.ts";
import { stationNo } from "../names.ts";

export const perimeterRaised: CallTexts = {
  "straps.threaded": {
    say: () => "Thread every strap flat. Leave tail to stand the pole.",
    ask: () => "All threaded, tails long enough to stand?",
    why: "A standing pole takes more strap than cloth on the ground. With a short tail it stalls.",
    wrong: "The strap is cranked down with the cloth still flat. The pole comes halfway up, stalls, and somebody forces it.",
    well: "Handle open, tail through the spool the way the ratchet's maker shows. Corners and seam ends stay snug until their pole goes up; the rest hang loose. It's all pulled through later.",
    ifNot: "Pull it out and thread it again, with tail to spare.",
  },
  "sides.laid": {
    say: () => "Lay a pole at every station, pin end at its ring.",
    ask: () => "How many poles at their stations?",
    why: "Nobody runs for a pole while another is in the air.",
    wrong: "Poles come off a pile one by one. Somebody with a pole on the shoulder trips over a strap.",
    well: "Carry low, with an eye on both ends and on the wires above. Lay each square to the edge, path clear.",
    ifNot: "Lay what's missing. Plan wrong? Change it.",
  },
  "raise.firstCorner": {
    say: (of) => `Corner ${of.corner}: pin ring and grommet, stand it, foot held, strap hand-tight.`,
    why: "The first corner holds all the others. One lifts, one watches the foot.",
    wrong: "One person stands it alone, and lets go to reach for a strap. It falls back with the cloth on top.",
    well: "Pin through ring and grommet first. One lifts, one holds the foot from the side, by hand or rope, until its strap is pulled through and snug. The sheet starts at another corner? Start there.",
  },
  "raise.corner": {
    say: (of) => `Corner ${of.corner}: pin ring and grommet, stand it, foot held, strap hand-tight.`,
    why: "Corners first, or the cloth drags the sides over.",
    wrong: "The next one goes up while the last one's foot is free. The cloth pulls, and both go over.",
    well: "Look back first: is the last one held and standing? Then lift steadily, hands on the pole, boots clear of every rope.",
  },
  "raise.edge": {
    say: (of) =>
      of.first === of.last
        ? `${of.edge}: stand the side pole, foot held, strap hand-tight.`
        : `${of.edge}: stand side poles ${stationNo(of.first)} to ${stationNo(of.last)}, each strapped hand-tight before the next.`,
    why: "In order, so that no side pulls alone.",
    wrong: "Somebody runs ahead and leaves gaps. The cloth sags there, and the pole that was skipped has to be forced up under it.",
    well: "Pin in, step in close, back straight, foot on its mark. A hand on the foot until that pole's strap is pulled through and snug; then the next.",
  },
  "sides.feet": {
    say: () => "Check every side-pole foot: on its mark, can't kick out.",
    ask: () => "Every foot secure?",
    why: "A foot that kicks out takes the next one with it.",
    wrong: "A foot stands on wet grass with nobody on it. Somebody leans on the pole, and it skates away.",
    well: "Look down at each foot and push it with a boot. Stand beside it, never in the way it would slide.",
    ifNot: "Hold it or rope it now. Nobody goes under until then.",
  },
  "pins.both": {
    say: () => "Walk around and look up: pin through ring and grommet.",
    ask: () => "How many pins go through both?",
    why: "Through just one, the cloth tears off the pole.",
    wrong: "From the path the pin looks home. The grommet has folded away behind it, and the first blow shows who looked.",
    well: "Stand beside each pole and look up: ring, grommet, and the end of the pin past them. What you can't see doesn't count.",
    ifNot: "Lower that pole and pin it again.",
  },
  "straps.turns": {
    say: () => "Check every ratchet: pulled through by hand, then wrapped on.",
    ask: () => "Fewest wraps on any ratchet?",
    why: "Too few and the webbing slips. More than the spool takes, and it jams.",
    wrong: "All the slack is cranked onto the spool. It fills up and jams before the strap is even snug.",
    well: "Pull the tail through first, so the spool takes only the last of it. At least two full wraps, square over each other, and never more than the spool holds.",
    ifNot: "Open it, pull the tail through, wrap it again.",
  },
  "straps.locked": {
    say: () => "Shut and lock every ratchet handle.",
    ask: () => "Every handle locked?",
    why: "A handle that springs open breaks a face.",
    wrong: "A handle is left standing up for the next pull. Somebody's sleeve catches it, and the strap runs out.",
    well: "Face out of the handle's way. Press it flat with your palm until the catch drops, then try to lift it.",
    ifNot: "Lock it, or swap the ratchet.",
  },
  "sides.notTight": {
    say: () => "Hand-tight only. The cloth has to give for the inside poles.",
    ask: () => "Any cranked past hand-tight?",
    why: "Too tight now, and the center poles won't stand.",
    wrong: "One strong hand cranks a side to make it look good. The crew under the cloth then fights every pole.",
    well: "Press each strap: it gives, and it doesn't hang. Too tight? Hand on the webbing, body out of line, let it out a click at a time.",
    ifNot: "Ease both sides alike, a click at a time, and look again.",
  },
};
