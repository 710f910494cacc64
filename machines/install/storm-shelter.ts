/** Trees and things with open sides or a cloth roof, as people call them in English. */
const NO_SHELTER =
  /\b(?:trees?|oaks?|elms?|maples?|pines?|willows?|birch(?:es)?|beech(?:es)?|poplars?|cottonwoods?|woods|grove|tents?|canop(?:y|ies)|marquees?|big top|gazebos?|pavilions?|awnings?|bleachers|grandstands?|dugouts?|carports?|porch(?:es)?|picnic shelters?|bus stops?|bandstands?|open sheds?|golf carts?|tractors?|convertibles?)\b/i;
/** What follows these words says where the place is, not what it is. */
const WHERE = /\b(?:by|near|at|beside|behind|under|below|opposite|past|next to|in front of|across from|close to)\b/i;
/** Buildings and vehicles: a name that has one of them is that, whatever street it stands on. */
const SHELTER =
  /\b(?:school|church|hotel|motel|inn|house|home|hall|barn|shop|store|office|garage|building|library|station|center|gym|museum|clubhouse|restaurant|cafe|warehouse|basement|kitchen|restrooms?|toilets?|truck|trucks|cab|cabs|bus|car|cars|van|vans|pickup)\b/i;

/**
 * Whether a place can be no shelter from lightning and wind: a tree, a tent, a roof on posts. National Weather Service,
 * lightning safety: no place outside is safe; a substantial building or a hard-topped metal vehicle is.
 *
 * @example isNoShelter("the oak at gate 3") // true
 */
export function isNoShelter(place: string): boolean {
  const [head = ""] = place.split(WHERE).filter((part) => /\p{L}/u.test(part));
  return NO_SHELTER.test(head) && !SHELTER.test(head.replace(FALSE_SHELTER, ""));
}
/** Names that hold a word of `SHELTER` and are none. */
const FALSE_SHELTER = /\b(?:bus stops?|golf carts?|open sheds?)\b/gi;
