import type { FixedQuestion } from "../question.ts";

/** What crews ask, each as an expansion (see `phrases`). These count through an open microphone too. */
export const BARE_QUESTIONS: Readonly<Record<FixedQuestion, string>> = {
  again: "again | say again | say (it | that) again | where am i | where are we",
  why: "why | why is that | what for",
  how: "how | how to | show me how | how (do | would | should) (i | we | you) do (it | that | this) | how is (it | that | this) done",
  whatsLeft: "what's left",
  howLong: "how long to go",
  whereNext: "where next",
  whichPiece: "which piece is this",
  laceSide: "which side is lace",
  strapLength: "how long is the strap",
  howFarToTheRing: "how (many | far) to the [next] ring",
  whatsTheWind: "what's the wind",
  whatsTheLimit: "what's the limit",
  lastRead: "what did we read last",
  whoSaid: "who said so",
  firstAid: "where's [the] first aid [kit]",
  rallyPoint: "where's the rally point",
  stormShelter: "where's the [storm] shelter",
  address: "what's the address",
};
/** These count once the guide is addressed: among people they are talk. */
export const ADDRESSED_QUESTIONS: Readonly<Record<FixedQuestion, string>> = {
  again:
    "say again please | say (it | that) again please | say that one more time | one more time | come again | what was that [again] | repeat [that | it] | " +
    "what's the call [again] | [i] didn't (catch | hear | get) that | what did you say | what do we do here",
  why: "how come [it matters] | why does (it | that) matter",
  how: "how's (that | it | this) (supposed to go | go) | how do (you want me | i | we) to (measure | do) that",
  whatsLeft:
    "what's left (on the list | here | of these | to do | to load) | what's (still | missing) [left | to (load | do | count)] | what's missing | what are we missing | how (much | many) (is | are) left | how many to go",
  howLong:
    "how (much longer | long) [[we] got | to go | is left | till we are done | until we are done | is it going to take] | how far along are we",
  whereNext:
    "what's next | what is next | what comes (next | after this) | what do (we | i) do next | where to next | what's after this | where do (we | i) go next",
  whichPiece: "what piece is this | which (edge | seam) is this | which panel is this | which panel",
  laceSide:
    "which side (laces | has the loops | do (i | we) lace from | is the lace | goes through) | whose loops | which (panel | piece) (laces | has the loops)",
  strapLength: "how long (is | are | should | do) the (strap | straps) [be | have to be | got to be | need to be]",
  howFarToTheRing: "how far is the [next] ring | how much to the [next] ring",
  whatsTheWind:
    "what's the wind [right now | now | doing | at] | how's the wind [doing | now] | what did the wind read | what was the [last] wind | how windy is it",
  whatsTheLimit:
    "what's the (max | maximum | minimum | min | most | least) | what's the limit on (the gust | that | this | the wind) | how (much | far) can (it | they | that | this) (be off | be | stick up | lean) | how close can (it | they) be | how many do (we | i) need | how much is too much",
  lastRead:
    "what was the last (number | reading | one) [(i | we) (gave you | said | read)] | what did (i | we) (answer | say | read) [last] | what's the last reading",
  whoSaid:
    "who (said | answered | counted | read | measured) (it | that | so | it was good | it is good) | who gave (you | us) that [number]",
  firstAid: "where's the first aid kit [at] | where (do | can) (i | we) (find | get) [the] first aid [kit]",
  rallyPoint: "where's the rally point [again] | where do we (meet | rally | muster) [up] [if it goes bad]",
  stormShelter: "where do we shelter | where do we go if it storms",
  address: "what's (our | this) address | where are we at | what do we tell 911",
};
/** What a question is about, asked in whatever words; the first that matches. These count once the guide is addressed. */
export const ABOUT: readonly (readonly [RegExp, FixedQuestion])[] = [
  [/^(?:where|what)\b.*\b(?:rally|rallying|meet|muster|everybody supposed to go)\b/, "rallyPoint"],
  [/^where\b.*\bfirst aid\b/, "firstAid"],
  [/^(?:where|what)\b.*\bshelter\b/, "stormShelter"],
  [/^(?:which|what|whose)\b.*\b(?:lace|laces|lacing|loops)\b/, "laceSide"],
  [/^(?:how long|what length)\b.*\bstraps?\b/, "strapLength"],
  [/^how (?:much longer|much more|much time|long)\b/, "howLong"],
  [
    /^(?:what|how much|how far|how close|how high|at what)\b.*\b(?:limit|max|maximum|minimum|least|most (?:it|they) can|can (?:it|they|we|this|that)|allowed|do we clear)\b/,
    "whatsTheLimit",
  ],
  [/^(?:what|at what)\b.*\bgust\b/, "whatsTheLimit"],
  [/^(?:when|what)\b.*\b(?:last|read)\b.*\b(?:reading|read|wind|checked)\b/, "lastRead"],
  [/^(?:what|how|tell me)\b.*\bwind\b/, "whatsTheWind"],
  [/^(?:what|how (?:many|much)|is there anything|anything)\b.*\b(?:left|missing|to go|remaining)\b/, "whatsLeft"],
  [/^what (?:is|comes|happens) (?:next|after)\b/, "whereNext"],
  [/^who (?:said|answered|counted|tied|laced|read|measured|checked|told|gave|looked)\b/, "whoSaid"],
  [
    /^(?:(?:can|could) you )?repeat$|^(?:(?:can|could) you )?(?:say|repeat) (?:that|it)\b|^one more time\b|^what (?:would|did) you say\b/,
    "again",
  ],
  [/^how (?:does|do)\b.*\b(?:go|work)\b/, "how"],
];
