import type { ExplainedWord } from '../../core/draw/explained.ts'
import type { PhraseCode } from '../../core/words/phrase.ts'

/** Where what is said of a word stands to be read, as far as it is not common practice. */
const SOURCES: Partial<Record<ExplainedWord, PhraseCode>> = {
  gathers: 'help.source.workwoman',
  hems: 'help.source.dillmont',
}
/** Names the book a word is explained from; undefined where it is common practice. */
export const sourceOf = (word: ExplainedWord): PhraseCode | undefined => SOURCES[word]

/** Which word of the trade a choice of a construction is about. */
const CHOICES: Record<string, ExplainedWord> = {
  gusset: 'gusset',
  crotchGusset: 'gusset',
  neckGusset: 'gusset',
  gores: 'gore',
  goresAt: 'gore',
  goreWidth: 'gore',
  goreCut: 'grain',
  capeSpread: 'godet',
  neck: 'keyhole',
  neckFinish: 'facing',
  neckEnd: 'casing',
  casing: 'casing',
  napeEnd: 'casing',
  bandDepth: 'band',
  cuffDepth: 'band',
  collarDepth: 'band',
  fullness: 'gathers',
  crownGathers: 'gathers',
  takenUp: 'pleats',
  lined: 'lining',
  interlined: 'lining',
  chestEase: 'ease',
  hipEase: 'ease',
  bustEase: 'ease',
  waistEase: 'ease',
  armEase: 'ease',
  armholeEase: 'ease',
  takenIn: 'grain',
  seamFinish: 'seams',
  bottomHem: 'hems',
  edgeHem: 'hems',
  frontHem: 'hems',
  faceHem: 'hems',
  sweep: 'sweep',
}
/** Undefined where a choice needs no explaining. */
export const wordOfChoice = (choice: string): ExplainedWord | undefined =>
  Object.hasOwn(CHOICES, choice) ? CHOICES[choice] : undefined

/** Which word a step of the making is about. */
const STEPS: Record<string, ExplainedWord> = {
  wash: 'shrinkage',
  piecing: 'piecing',
  gores: 'gore',
  shoulderGores: 'godet',
  gussets: 'gusset',
  crotch: 'gusset',
  sleeveSeams: 'gusset',
  armholes: 'seams',
  shoulders: 'seams',
  sideSeams: 'seams',
  casing: 'casing',
  band: 'band',
  wristbands: 'band',
  neckband: 'band',
  neck: 'facing',
  crown: 'gathers',
  sewLining: 'lining',
  fellLining: 'lining',
  level: 'grain',
  wrists: 'hems',
  bottom: 'hems',
  edges: 'hems',
  growthTucks: 'tucks',
}
/** Undefined where a step needs no explaining. */
export const wordOfStep = (step: string): ExplainedWord | undefined =>
  Object.hasOwn(STEPS, step) ? STEPS[step] : undefined
