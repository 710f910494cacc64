import { anchors } from "./anchors.ts";
import { answerText } from "./answers.ts";
import { backup, copying, restore } from "./backup.ts";
import { choices, fieldName, fields, groups, openJob } from "./brief.ts";
import { calls } from "./calls.ts";
import { changes, changeText, discrepancy } from "./changes.ts";
import { figureText } from "./checks.ts";
import { client } from "./client.ts";
import { findingInnocent, findingTitle, findingWhat, findingWhy } from "./doubts.ts";
import { draft } from "./draft.ts";
import { drawing, layoutDrawing } from "./drawing.ts";
import { errors, notRecordedText } from "./errors.ts";
import { factName, facts } from "./facts.ts";
import { figures } from "./figures.ts";
import { findings } from "./findings.ts";
import { firm } from "./firm.ts";
import { foundTexts } from "./found.ts";
import { guide, more } from "./guide.ts";
import { handOver } from "./hand-over.ts";
import { handWork } from "./hand-work.ts";
import { hurt } from "./hurt.ts";
import { join } from "./join.ts";
import { edgeName, layout, poleKind, sideName, stationKind } from "./layout.ts";
import { learn } from "./learn.ts";
import { tapeText } from "./lengths.ts";
import { findingText, limitText, sourceText, valueText } from "./limits.ts";
import { loads } from "./loads.ts";
import { feetInches, inches, kitName, partName, pieceName, quantity, seamName, utilityName } from "./names.ts";
import { office } from "./office.ts";
import { header, home, page, plan, problem } from "./page.ts";
import { phone } from "./phone.ts";
import { photos } from "./photos.ts";
import { picture } from "./picture.ts";
import { proof } from "./proof.ts";
import { questions } from "./questions.ts";
import { atAGlance, duration, markName, record, sourceName } from "./record.ts";
import {
  becauseText,
  didText,
  leanText,
  overAgreedText,
  overRaiseText,
  readBackText,
  refusalText,
  statusText,
  stopText,
  takenText,
} from "./refusals.ts";
import { rehearsal } from "./rehearsal.ts";
import { report } from "./report.ts";
import { phaseName, readingListed, roleName, weatherListed, weatherShort, weatherWords } from "./roles.ts";
import { compassPoint, intentText, saidText } from "./said.ts";
import { siteDrawing } from "./site-drawing.ts";
import { siteForms } from "./site-forms.ts";
import { sky } from "./sky.ts";
import { lengthName, lengths } from "./squaring.ts";
import { start } from "./start.ts";
import { stop } from "./stop.ts";
import { tents } from "./tents.ts";
import { thisSite } from "./this-site.ts";
import { about, phaseIsName, time } from "./time.ts";
import { trouble } from "./trouble.ts";
import { outBack, truck } from "./truck.ts";
import { trust } from "./trust.ts";
import { verify } from "./verify.ts";
import { voice } from "./voice.ts";
import { weatherPlan } from "./weather-plan.ts";
import { when } from "./when.ts";
import { workedOut } from "./worked-out.ts";

/** American English, with the day before the month and a clock of 24 hours. */
export const en = {
  /** As pages and browsers name the language (BCP 47). */
  lang: "en",

  // Pages, each with its words.
  page,
  header,
  home,
  openJob,
  phone,
  draft,
  firm,
  facts,
  factName,
  guide,
  handOver,
  handWork,
  hurt,
  join,
  learn,
  office,
  more,
  stop,
  sky,
  photos,
  plan,
  layout,
  thisSite,
  siteForms,
  siteDrawing,
  discrepancy,
  truck,
  time,
  record,
  proof,
  report,
  figures,
  anchors,
  loads,
  weatherPlan,
  workedOut,
  found: foundTexts,
  findings,
  findingTitle,
  findingWhat,
  findingWhy,
  findingInnocent,
  atAGlance,
  tents,
  trust,
  problem,

  // Parts that pages share.
  fields,
  groups,
  choices,
  fieldName,
  changes,
  changeText,
  drawing,
  layoutDrawing,
  picture,
  lengths,
  lengthName,
  outBack,
  questions,
  rehearsal,
  trouble,
  client,

  // The conversation.
  calls,
  answerText,
  voice,
  intentText,
  saidText,
  compassPoint,
  didText,
  becauseText,
  refusalText,
  overAgreedText,
  overRaiseText,
  stopText,
  readBackText,
  takenText,
  statusText,
  limitText,
  valueText,
  sourceText,
  findingText,
  leanText,
  weatherWords,
  weatherShort,
  weatherListed,
  readingListed,

  // What is wrong with a request.
  errors,
  notRecordedText,

  // Names, numbers, moments.
  roleName,
  phaseName,
  phaseIsName,
  markName,
  sourceName,
  kitName,
  pieceName,
  partName,
  seamName,
  utilityName,
  stationKind,
  poleKind,
  sideName,
  edgeName,
  feetInches,
  inches,
  tapeText,
  quantity,
  figureText,
  about,
  duration,
  when,

  // For the one at the terminal.
  start,
  verify,
  backup,
  restore,
  copying,
} as const;
