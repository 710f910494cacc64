/** Whole minutes from a minute and a half on; people wait by the clock on the wall. */
const waited = (seconds: number) => (seconds < 90 ? `${seconds} seconds` : `${Math.ceil(seconds / 60)} minutes`);

/** Getting on a job: the code, the name, and what keeps somebody out. */
export const join = {
  title: "Get on a job",
  ask: "Code for the job",
  asked: "It's on the paper by the truck's door. Or point the camera at the square there.",
  go: "Look it up",
  who: "Who are you?",
  name: (name: string, role: string) => `${name}, ${role}`,
  notListed: "Not on the list? Ask the lead to add you. A second person agrees.",
  leadsCode: "Lead, deputy, competent person or manager? Use the leads' code.",
  again: "Get on again with the code",
  here: "Give this phone to somebody else",
  wrongCode: "That's no code for this. Read it again off the paper, or ask the lead.",
  notWithThis: (name: string) => `${name} can't get on with that code. Ask the lead for the other one.`,
  wait: (seconds: number) => `Too many wrong codes were tried here. Wait ${waited(seconds)}. Hold still works on phones that are on.`,
  closed: "That job is closed. The office has its record.",
  /** Why a phone does not see a page of a job. */
  shut: {
    first: "This phone isn't on the job. Get on with the code from the truck.",
    ranOut: "This phone's pass ran out. Hold and help still work. Get on again with the code.",
    offCrew: "You're off this job's crew. Hold and help still work. Ask the lead.",
    notStanding: "The tent isn't standing yet. You see it once it is. Hold and help work now.",
    notYours: "Your role doesn't open this page. Ask the lead.",
  },
  onlyStops: "Only hold and help get through from this phone. Get on again with the code.",
  notAs: (name: string) => `This phone isn't on the job as ${name}. Get on with the code, under your own name.`,
  forged: "This phone's pass is from another server. Get on again with the code.",
  codes: {
    title: "Codes for getting on",
    crew: "For the crew",
    crewTold: "Point a phone's camera at it, or type the code. Pin it up by the truck's door.",
    leads: "For those who lead",
    leadsTold: "Lead, deputy, competent person and manager get on with this one. Don't pin it up.",
    code: (code: string) => code,
    at: (address: string) => `At ${address}`,
    square: (code: string) => `Square that a phone's camera reads: ${code}`,
    renew: "New codes",
    renewTold: "Somebody saw a code who shouldn't? The old ones stop at once. Who is on stays on, a lost phone too.",
    onlyHere: "Phones can't reach this address. Start the server with --https for the site's own network.",
  },
} as const;
