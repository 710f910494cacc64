/** Trees, as people call them in English. */
const TREES =
  /\b(?:trees?|oaks?|elms?|maples?|pines?|willows?|birch(?:es)?|beech(?:es)?|poplars?|cottonwoods?|woods|grove|big top|tractors?)\b/i;
/** What has a cloth roof, a roof on posts, open sides or no weight, though a word of it may be a building or a vehicle. */
const OPEN = new RegExp(
  `\\b(?:${[
    "tents?|canop(?:y|ies)|marquees?|awnings?|umbrellas?|tarps?|pop[- ]?ups?|bounce houses?|inflatables?",
    "gazebos?|pavilions?|pergolas?|bandstands?|band ?shells?|stages?|bleachers|grandstands?|dugouts?|carports?|breezeways?",
    "porch(?:es)?|verandas?|patios?|decks?|balcon(?:y|ies)|overhangs?|lean-?tos?|eaves|picnic shelters?|shade structures?",
    "bus (?:stops?|shelters?)|(?:open|garden|tool|storage) sheds?|green ?houses?|tree ?houses?|out ?houses?",
    "port(?:a|-a|able)?[- ]?(?:johns?|pott(?:y|ies))|portable (?:toilets?|restrooms?)",
    "trailers?|trailer (?:houses?|homes?)|mobile homes?|campers?|flat ?beds?|beds?(?=\\s*$)",
    "golf carts?|carts?|utvs?|atvs?|four-wheelers?|motorcycles?|convertibles?(?: cars?)?|(?:open|soft)[- ]top(?:ped)?(?: \\w+)?",
    "fork ?lifts?|skid ?steers?|telehandlers?",
  ].join("|")})\\b`,
  "gi",
);
/** Buildings and vehicles: a name that has one of them is that, whatever street it stands on. */
const SHELTER =
  /\b(?:schools?|church|hotel|motel|inn|houses?|home|hall|barns?|shop|store|office|garage|building|library|station|center|gym|museum|clubhouse|restaurant|cafe|warehouse|basement|kitchen|restrooms?|toilets?|vehicles?|trucks?|cabs?|bus|buses|cars?|vans?|pickups?)\b/gi;
/** What follows these words says where the place is, not what it is. */
const WHERE = /\b(?:by|near|at|beside|behind|under|below|beneath|opposite|past|with|next to|in front of|across from|close to)\b/i;
/** A street is called after what does not stand there. */
const STREET = /\b\w+ (?:streets?|st|avenues?|ave|roads?|rd|lanes?|ln|drives?|boulevard|blvd)\b/gi;
/** Each place of several that are named. */
const BETWEEN = /[,;/]|\bor\b/i;

/**
 * Whether a place can be no shelter from lightning and wind: a tree, a tent, a roof on posts, a trailer. National Weather Service,
 * lightning safety: no place outside is safe; a substantial building or a hard-topped metal vehicle is.
 *
 * @example isNoShelter("the oak at gate 3") // true
 * @example isNoShelter("house porch") // true
 */
export function isNoShelter(place: string): boolean {
  const named = place.replace(STREET, "");
  const head = headOf(named);
  return (TREES.test(head) && head.search(SHELTER) < 0) || named.split(BETWEEN).some((one) => isOpen(headOf(one)));
}

/** What a place is, without where it is. */
const headOf = (text: string): string => text.split(WHERE).find((part) => /\p{L}/u.test(part)) ?? "";

/** Of two words for a place the last says what it is: a house porch is a porch. What stands after "of" or "on" says whose it is. */
function isOpen(head: string): boolean {
  const ends = head.split(/\b(?:of|on)\b/i).map((part) => [lastEnd(part, OPEN), lastEnd(part, SHELTER)] as const);
  const [open, shelter] = ends.find((end) => Math.max(...end) >= 0) ?? [-1, -1];
  return open >= 0 && open >= shelter;
}
/** Where the last of these words ends; -1 if there is none. */
const lastEnd = (text: string, words: RegExp): number => Math.max(-1, ...[...text.matchAll(words)].map((m) => m.index + m[0].length));
