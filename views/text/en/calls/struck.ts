import { kitName, lineName } from "../names.ts";
import type { Words } from "../words.ts";

export const struck: Words = {
  "strike.people": {
    say: () => "People out, tables and stage out.",
    ask: () => "Is it empty?",
    why: "What stands under it catches poles and ropes.",
    ifNot: "Wait until it is empty.",
  },
  "strike.power": {
    say: () => "Power off at the source. Cables out.",
    ask: () => "Is the power off, and the cable out?",
    why: "A pole through a live cable kills.",
    ifNot: "Find who can switch it off. Do not pull cables yourself.",
  },
  "strike.walls": {
    say: () => "Walls off, lee side last.",
    ask: () => "Are all walls off?",
    why: "With walls on, easing a strap is a sail let go.",
    ifNot: "Take them off before any strap is eased.",
  },
  "strike.ease": { say: () => "Ease the straps evenly, opposite sides together. None comes off.", why: "Uneven, the poles go over." },
  "lower.line": { say: (of) => `On the call: lower ${lineName(of)}. Foot held, top walked down.`, why: "A pole that is let go whips." },
  "strike.interiorDown": {
    say: () => "Everything inside is down before any perimeter strap comes off.",
    ask: () => "How many inside poles lie on the ground?",
    why: "The straps are all that hold them.",
    ifNot: "Lower the rest first.",
  },
  "strike.sides": {
    say: () => "Side poles down, round the tent, corners last.",
    why: "The corners hold the cloth while the sides come down.",
  },
  "strike.corners": { say: () => "Corners down, opposite ones together.", why: "A last corner alone takes the whole cloth in a gust." },
  "strike.unlace": {
    say: () => "Unlace every seam from the edge in. Keep a foot on the cloth in wind.",
    why: "Cloth that comes loose is a sail.",
  },
  "strike.lower": { say: () => "Take the straps off and keep a foot on the cloth in wind.", why: "Cloth that comes loose is a sail." },
  "strike.fold": { say: () => "Sweep, fold, bag. Wet cloth gets a tag.", why: "Wet cloth rots in the bag." },
  "strike.stakes": {
    say: (of) => `Pull the stakes: ${of.stakes}. Straight up, nobody over the puller.`,
    why: "A stake that lets go flies.",
  },
  "back.stakes": {
    say: (of) => `Count the stakes back. ${of.stakes} went in.`,
    ask: () => "How many came back?",
    why: "The one left in the grass finds a mower or a foot.",
    ifNot: "Find it: the job stays open. One that cannot come out: show the site owner, and their paper.",
  },
  "back.item": {
    say: (of) => `Count back the ${kitName(of.item)}: ${of.count}.`,
    ask: (of) => `How many ${kitName(of.item)} came back?`,
    why: "What is short now is short on the next job.",
    ifNot: "Look again, or leave it with a reason.",
  },
  "strike.ground": {
    say: () => "Walk the ground: holes filled, nothing sharp, white paint only.",
    ask: () => "Is the ground clean?",
    why: "It is somebody's field.",
    ifNot: "Walk it again with a magnet and a rake.",
  },
};
