import type { HandWorkId } from "../../../machines/picture/hand-work.ts";

/** What one frame says to do, at most 14 words, and what it shows, for who cannot see it. */
type FrameLine = { readonly does: string; readonly shows: string };
type DrawingText = { readonly title: string; readonly lines: readonly FrameLine[] };

const drawings: Readonly<Record<HandWorkId, DrawingText>> = {
  tolerance: {
    title: "The zone beside a buried line",
    lines: [
      {
        does: "Nothing gets driven inside the zone. Measure from the near edge of the paint.",
        shows: "From above: a painted line, a hatched zone on each side, a dot inside crossed out, a dot outside checked.",
      },
      {
        does: "The line can lie beside its paint. Only its owner digs here, by hand.",
        shows: "Cut through the ground: the pipe lies to one side of its paint. A stake inside the zone is crossed out.",
      },
    ],
  },
  signals: {
    title: "Hand signals: agree on yours at the talk",
    lines: [
      { does: "Hold: arm straight up, hand open.", shows: "A person with one arm straight up and the hand open." },
      { does: "Take up slack: finger up, small circles.", shows: "A person with one finger up, moving in a circle." },
      { does: "Lower: arm out, palm down, press down.", shows: "A person with one arm out, palm down, moving down." },
      { does: "All clear: arm out, thumb up.", shows: "A person with one arm out and the thumb up." },
    ],
  },
  threeFourFive: {
    title: "Three, four, five",
    lines: [
      {
        does: "One tape from A, one from the mark. Pin where both are tight.",
        shows: "From above: 40 feet from A toward B, 30 toward D, 50 across. The two tapes cross at the pin.",
      },
      {
        does: "Made small, a little off at A is far off at the end.",
        shows: "A small triangle at the corner. Its side, drawn on, runs off from the square line more and more.",
      },
    ],
  },
  levelTape: {
    title: "A level tape on a slope",
    lines: [
      {
        does: "Hold the tape level. Drop a plumb bob. Go on from its mark.",
        shows: "A slope taped in two level steps. A plumb bob carries the end of each step down to the ground.",
      },
      {
        does: "Never lay it on the ground: the line comes out short.",
        shows: "A tape laid on the slope ends before the mark of the level one.",
      },
    ],
  },
  plates: {
    title: "Which way plates stand, from above",
    lines: [
      {
        does: "Side: straight out from the pole. Plate square across its strap.",
        shows: "A side station: one strap straight out, one plate with two stakes, square across it.",
      },
      {
        does: "Seam end: side by side, same distance out, a strap to each.",
        shows: "A seam end: two plates beside each other on the stake line, a strap from the pole to each.",
      },
      {
        does: "Corner: around the corner. Each plate faces the pole, square across its strap.",
        shows: "A corner: plates square to both edges and on the diagonal, each turned across its own strap.",
      },
    ],
  },
  stakeLean: {
    title: "How a stake leans",
    lines: [
      { does: "Plumb is the least. The strap pulls low.", shows: "A plumb stake, with its strap low, toward the tent at the left." },
      {
        does: "Head away from the tent, up to what the sheet allows.",
        shows: "A stake that leans 10 degrees away from the tent, inside a fan of 0 to 15 degrees.",
      },
      { does: "Never toward the tent: pull it, drive it again alongside.", shows: "A stake that leans toward the tent, crossed out." },
    ],
  },
  showing: {
    title: "What shows, and what holds",
    lines: [
      {
        does: "Drive it until no more shows than the sheet allows.",
        shows: "A 42-inch stake to scale: 6 inches show, 36 are in the ground.",
      },
      {
        does: "Tape the tallest from firm ground. Too high: drive it down.",
        shows: "The same stake with 12 inches showing, a tape held against it, crossed out.",
      },
    ],
  },
  strapChoked: {
    title: "A strap choked low",
    lines: [
      {
        does: "Flat around the stakes, low, where the sheet shows it.",
        shows: "Seen from the tent: a hand leads a strap around two stakes, just above their plate.",
      },
      {
        does: "End through its own eye. Snug, tug once: it stays down.",
        shows: "The strap's end comes out through its own eye, between the stakes, and is pulled up toward the tent.",
      },
      {
        does: "High on the heads it bends them over and rides up.",
        shows: "From the side: a strap high on a stake bends it over toward the tent, crossed out.",
      },
    ],
  },
  ringHook: {
    title: "A hook in its ring",
    lines: [
      {
        does: "Hook through the ring. Feel around it until you know it's shut.",
        shows: "A hook through a ring, its gate shut, fingers on the gate.",
      },
      {
        does: "Half shut, it comes off with the first flap.",
        shows: "The gate stands in, off the hook's point; an arrow leads the ring out past it. Crossed out.",
      },
    ],
  },
  loops: {
    title: "Loop through loop",
    lines: [
      { does: "Loop up through its grommet.", shows: "Two fingers pull a rope loop up through its grommet." },
      {
        does: "Lay it to the next grommet. Next loop up through grommet and loop.",
        shows: "The first loop lies around the next grommet. The next loop comes up through both.",
      },
      {
        does: "A short tug at each, and on toward the edge.",
        shows: "Loops in a row, each coming out through the one before, a hand tugging the last toward the edge.",
      },
    ],
  },
  flap: {
    title: "Flap over the lace",
    lines: [
      { does: "Lay the flap flat over the lace as you go.", shows: "Cut across the seam: a hand presses the flap flat over the lace." },
      {
        does: "Left out, it bunches up, and rain runs in.",
        shows: "The flap stands bunched beside the lace, rain falls on it, crossed out.",
      },
    ],
  },
  longLoop: {
    title: "The long loop",
    lines: [
      {
        does: "Lace from the center past the ring. Leave the long loop on top.",
        shows: "Half a seam from above: small loops from the center ring, then one long loop past the quarter ring.",
      },
      {
        does: "To the edge, and lace back to the long loop. Tie off there.",
        shows: "The same half: small loops come back from the edge and meet the long loop.",
      },
    ],
  },
  tieOff: {
    title: "Tying off a half",
    lines: [
      {
        does: "Last rope through the long loop, and back.",
        shows: "A rope from the edge goes through the long loop; a hand pulls its end back.",
      },
      {
        does: "Twice around itself, tucked each time. The maker's knot comes first.",
        shows: "The end makes two half hitches, numbered 1 and 2, around its own rope.",
      },
      { does: "Pull hard. Then see that the hook is shut.", shows: "The knot pulled tight against the long loop, a hand pulling its end." },
    ],
  },
  unzips: {
    title: "How a seam lets go: one loop missed",
    lines: [
      {
        does: "Loop 3 was not pulled through loop 2.",
        shows: "Four loops from the center. Loop 2 lies beside loop 3, which does not go through it.",
      },
      {
        does: "Nothing holds loop 2. It slips out, and loop 1 is free.",
        shows: "Loop 2 slips out of its grommet, then loop 1. The seam opens.",
      },
      {
        does: "The seam opens from the center to the missed loop.",
        shows: "The two pieces stand apart from the center up to loop 3. From there on the loops hold.",
      },
    ],
  },
  ratchetThreaded: {
    title: "A ratchet threaded",
    lines: [
      {
        does: "Handle open. Tail up through the slot, flat, as its maker shows.",
        shows: "A ratchet from the side, handle up: webbing comes from the pole and goes up through the slot of the spool.",
      },
      { does: "Leave tail enough to stand the pole.", shows: "The same, with a long tail hanging out of the slot." },
    ],
  },
  pin: {
    title: "Pin through ring and grommet",
    lines: [
      {
        does: "Ring on the pin, then grommet. See the pin's end past both.",
        shows: "Cut down the middle: the pin of a pole goes through the ring, then the grommet, and stands out above.",
      },
      {
        does: "Ring alone: the cloth tears off. Lower it, pin it again.",
        shows: "The pin goes through the ring only; the grommet is folded away beside it. Crossed out.",
      },
    ],
  },
  ratchetWrapped: {
    title: "A ratchet wrapped",
    lines: [
      { does: "First pull all the slack through by hand.", shows: "A hand pulls the tail through the open ratchet." },
      {
        does: "Then crank. Count full turns on the spool, square over each other.",
        shows: "The spool from the side with two full turns of webbing, numbered.",
      },
      { does: "Slack cranked on fills the spool, and it jams.", shows: "A spool wound full, past its frame, crossed out." },
    ],
  },
  ratchetLocked: {
    title: "A ratchet locked",
    lines: [
      {
        does: "Face out of its way. Press it flat until the catch drops.",
        shows: "A palm presses the handle down toward the frame of the ratchet. Its catch has not dropped yet.",
      },
      { does: "Now try to lift it. It stays.", shows: "A hand under the flat handle tries to lift it; the handle stays down." },
    ],
  },
  leanIn: {
    title: "Leaning in a center pole",
    lines: [
      {
        does: "Top into its ring, pole low, foot away from its plate.",
        shows: "A pole lies low, its pin in the ring; two people beside it with their hands on it.",
      },
      {
        does: "On the call: foot low, walked in to its plate, short steps.",
        shows: "The foot moves along the ground toward its plate, and the top of the pole rises.",
      },
      {
        does: "On its plate: hands on until the foot is secured.",
        shows:
          "The pole stands on its plate; two people hold it, one kneels and secures its foot. Nobody is on the side that its foot came from.",
      },
    ],
  },
  standUp: {
    title: "Where nobody stands",
    lines: [
      {
        does: "Beside the pole, never in line with its foot. The caller stands off.",
        shows: "From above: two people on each side of a pole; a hatched fan behind its foot, as long as the pole.",
      },
      {
        does: "It reaches its own length all around. Keep everybody else out.",
        shows: "From the side: a half circle around the foot, as far as the pole is long. The caller stands outside.",
      },
    ],
  },
  plumb: {
    title: "How far off plumb",
    lines: [
      {
        does: "Plumb bob from its top. Tape from the string to the foot.",
        shows: "A leaning side pole, a plumb bob from its top, and the distance from string to foot. The lean is drawn larger.",
      },
      {
        does: "Both ways: along the edge, and straight out from it.",
        shows:
          "From above: the string's point off the foot. One tape goes along the edge of the tent, one straight out, to be level with it.",
      },
    ],
  },
  ratchetEased: {
    title: "A loaded ratchet eased",
    lines: [
      {
        does: "Stand beside the strap, never in line. Face out of the handle's way.",
        shows: "From above: the strap's line, hatched. A person stands beside it, one hand on the handle, one on the webbing.",
      },
      {
        does: "One hand on the webbing, one on the handle.",
        shows: "Two hands: one holds the handle of a loaded ratchet, one lies on the webbing.",
      },
      {
        does: "Let it out a click at a time. Let it catch again.",
        shows: "The pawl is lifted, the handle goes back one tooth, and the webbing moves a little.",
      },
      {
        does: "Never throw it open with load on. Never cut the strap.",
        shows: "The handle is thrown open and the webbing runs out, crossed out.",
      },
    ],
  },
  cornerEarly: {
    title: "How a tent lets go: one corner early",
    lines: [
      {
        does: "The corner's strap holds every pole along the edge.",
        shows: "An edge with its poles upright, and the strap from the corner to its stake.",
      },
      {
        does: "Let go early, the corner leans and the edge sags.",
        shows: "The corner's strap lies slack. The corner pole leans in and the cloth sags, crossed out.",
      },
      {
        does: "The next poles go over in a row. Corners come last.",
        shows: "Three poles lie over in a row, each more than the next, crossed out.",
      },
    ],
  },
};

/** Words of the drawings of the hand work: their captions, what is lettered in them, and the page that has them all. */
export const handWork = {
  drawings,
  all: "All hand work drawings",
  title: "The hand work",
  intro: "Drawings of what hands do, in the order of a raise.",
  caution: "General practice. The maker's manual and the sheet come first.",
  print: "Print this page: it comes out as a booklet.",
  index: "Go to one",
  /** What is lettered in the drawings: as short as it can be. */
  labels: {
    grommet: "grommet",
    loopEdge: "loop edge",
    first: "first",
    next: "next",
    toEdge: "to the edge",
    center: "center",
    ring: "ring",
    longLoop: "long loop",
    edge: "edge",
    tieHere: "tie here",
    flap: "flap",
    lace: "lace",
    rain: "rain",
    fromEdge: "from the edge",
    twoHitches: "two half hitches",
    pullHard: "pull hard",
    shutAndFelt: "shut: feel it",
    gateOpen: "gate open",
    comesOff: "comes off",
    plumb: "plumb",
    toTent: "to tent",
    upToDeg: (deg: number) => `up to ${deg}°`,
    pullsOut: "pulls out",
    atMost: (length: string) => `${length} at most`,
    inGround: "in the ground",
    holds: "this holds",
    driveDown: "drive it down",
    tent: "tent",
    plates: (n: number) => `${n} plates`,
    side: "side",
    seamEnd: "seam end",
    corner: "corner",
    around: "around, low and flat",
    eye: "its eye",
    seenFromTent: "seen from the tent",
    throughEye: "through eye",
    bendsOver: "bends it over",
    upThroughSlot: "up through",
    toPole: "to the pole",
    toStake: "to the stake",
    longTail: "long tail",
    pullSlack: "slack first",
    fullTurns: (n: number) => `${n} full turns`,
    spoolFull: "spool full:",
    jams: "it jams",
    itsFrame: "its frame",
    palmDown: "palm flat, press",
    catchDown: "catch is down",
    tryLift: "try to lift",
    firmHandle: "hold handle",
    handHere: "and here",
    load: "load",
    outOfLine: "body out of line",
    pawlUp: "pawl up",
    oneTooth: "one tooth",
    thrownOpen: "thrown open",
    runsOut: "strap runs out",
    pin: "pin",
    pole: "pole",
    grommetFolded: "grommet, folded",
    ringOnly: "ring only",
    howMuch: "how much?",
    fromTop: "from the top",
    string: "string",
    limitOver: (off: string, over: string) => `at most ${off} over ${over}`,
    alongEdge: "along the edge",
    outFromEdge: "straight out",
    footAbove: "foot, from above",
    pinInRing: "pin in ring",
    plate: "plate",
    footFar: "foot far out",
    footLow: "foot low",
    topRises: "top rises",
    handsOn: "hands on till",
    tillSecured: "it's secured",
    caller: "caller",
    nobody: "nobody",
    poleLength: "the pole's length",
    beside: "hands: beside it",
    reachesThis: "reaches this far",
    tapesCross: "pin here",
    mark: "mark",
    toCorner: (corner: string) => `to ${corner}`,
    offHere: "far off here",
    smallTriangle: "too small",
    errorLarger: "error drawn larger",
    leanLarger: "lean drawn larger",
    level: "level",
    bobMarks: "bob marks it",
    comesShort: "comes out short",
    onGround: "on the ground",
    stakeDot: "stake dot",
    itsOwner: "its owner",
    digsHere: "digs here",
    paint: "paint",
    lineOff: "the line",
    noDriving: "no driving",
    missed: "missed",
    twoFree: "2, then 1: free",
    open: "open",
    openToHere: "open to here",
    holdsRest: "holds the rest",
    strap: "strap",
    strapOff: "strap let go",
    sags: "edge sags",
    inARow: "over in a row",
  },
};
