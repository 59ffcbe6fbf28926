import { type LengthUnit, MM_PER } from '../words/units.ts'
import {
  agreementOf,
  type Expected,
  expectedOf,
  fartherBy,
  type Gaussian,
  partOf,
  upperTail,
} from './gaussian.ts'
import { contradictions } from './plausible.ts'
import { cloudOf, comparable, type Lengths, surveyedAs } from './proportions.ts'
import type { ProportionsOf } from './survey.ts'
import { isGirth, MEASURES, type MeasureId } from './vocabulary.ts'

/**
 * What may be wrong with a measure. `range`: no body is so small or so large. `contradiction`: larger than one
 * it must be smaller than. `unit`: as if inches had been taken for centimetres or the reverse. `swapped`: as if
 * two measures had changed places. `digit`: as if a digit had slipped. `unlikely`: it goes badly with the
 * others, and none of these explains it.
 */
export type Doubt = {
  measure: MeasureId
  kind: 'range' | 'contradiction' | 'unit' | 'swapped' | 'digit' | 'unlikely'
  /** Surely a slip, or only to be looked at again. */
  sure: boolean
  mm: number
  /** What the other measures would have it be, ± the standard deviation, mm; missing where nothing is known. */
  expected?: { mm: number; sd: number }
  /** What it would be if the slip were undone, mm. */
  rather?: number
  /** The measure it was swapped with. */
  other?: MeasureId
}

/** Every number that doubt goes by. Deviations are standard deviations of what the other measures leave open. */
export const DOUBT = {
  /** The slip that is looked for hardest, mm: the tape read one decimetre off. */
  slip: 100,
  /** Part of the sets without any slip in which chance alone may raise a doubt, were measures quite normal. */
  chance: 0.01,
  /** No deviation beyond this is left alone. */
  most: 5,
  /** How much better two measures must go when they change places, in squared deviations. */
  swap: 14,
  /** An explanation must bring the measure this near to what is expected. */
  near: 2.2,
  /** What speaks against an explanation, in squared deviations: its kind is not the commonest. */
  against: { unit: 0, digits: 1, figure: 4, swapped: 3 },
  /** A deviation that is surely a slip. */
  sure: 7.5,
  /** More doubts than this at once say that the measures are of two people, or of nobody. */
  atOnce: 4,
} as const

type Compared = { ids: MeasureId[]; cloud: Gaussian; logs: number[] }

/**
 * Says which measures of a set may be slips of the tape or of the pen, the gravest first: by the proportions of
 * the people of a survey, and by what holds for any body. Real bodies differ from any survey: a doubt is never
 * more than a reason to measure again.
 *
 * @param lengths in mm
 * @param of whose proportions; of children, whom the survey does not know, undefined
 * @param unit in which they were written: which digits may have slipped
 */
export function doubtsOf(lengths: Lengths, of: ProportionsOf | undefined, unit: LengthUnit = 'cm'): Doubt[] {
  const absurd = (Object.keys(lengths) as MeasureId[]).filter((id) => {
    const [least, most] = MEASURES[id].range
    return lengths[id]! < least || lengths[id]! > most
  })
  const held: Lengths = { ...lengths }
  for (const id of absurd) delete held[id]
  const doubts = absurd.map((id) => outOfRange(id, lengths[id]!, held, of, unit))
  if (of !== undefined) doubts.push(...unlikely(setOf(held, of), DOUBT.atOnce - doubts.length, unit))
  const named = new Set(doubts.flatMap(({ measure, other }) => [measure, other]))
  for (const [measure, other] of contradictions(held)) {
    if (named.has(measure) || named.has(other)) continue
    doubts.push({ measure, other, kind: 'contradiction', sure: true, mm: held[measure]! })
  }
  return doubts
}

function unlikely(set: Compared, most: number, unit: LengthUnit): Doubt[] {
  const doubts: Doubt[] = []
  while (doubts.length < most && set.ids.length > 2) {
    const doubt = gravest(set, unit)
    if (doubt === undefined) break
    doubts.push(doubt)
    // Without it, the others are no longer led astray.
    without(set, doubt)
  }
  return doubts
}

function setOf(lengths: Lengths, of: ProportionsOf): Compared {
  const { ids, at } = comparable(lengths, of)
  return { ids, cloud: partOf(cloudOf(of), at), logs: ids.map((id) => Math.log(lengths[id]!)) }
}

function outOfRange(
  id: MeasureId,
  mm: number,
  held: Lengths,
  of: ProportionsOf | undefined,
  unit: LengthUnit,
): Doubt {
  const [least, most] = MEASURES[id].range
  const possible = otherReadings(mm, unit).filter((reading) => reading.mm >= least && reading.mm <= most)
  const expected = of === undefined ? undefined : expectedFor(id, held, of)
  if (expected === undefined) {
    const other = possible.find(({ kind }) => kind === 'unit')
    return { measure: id, kind: other?.kind ?? 'range', sure: true, mm, ...(other && { rather: other.mm }) }
  }
  const cost = ({ mm: rather, against }: Reading) =>
    ((Math.log(rather) - expected.mean) / expected.sd) ** 2 + against
  const [best] = possible.sort((a, b) => cost(a) - cost(b))
  const fits = best !== undefined && cost(best) - best.against <= DOUBT.near ** 2
  return {
    ...{ measure: id, kind: fits ? best.kind : 'range', sure: true, mm, expected: inMm(expected) },
    ...(fits ? { rather: best.mm } : {}),
  }
}

/** What the others would have a measure be, as a logarithm; undefined when they say nothing of it. */
function expectedFor(id: MeasureId, held: Lengths, of: ProportionsOf): Expected | undefined {
  const others = { ...held }
  delete others[id]
  const wanted = surveyedAs(id, of)
  const { ids, at } = comparable(others, of)
  if (wanted < 0 || ids.length < 2) return undefined
  const logs = ids.map((one) => Math.log(others[one]!))
  return expectedOf(cloudOf(of), at, logs, [wanted])[0]!
}

const inMm = ({ mean, sd }: { mean: number; sd: number }) => ({
  mm: Math.exp(mean),
  sd: Math.exp(mean) * sd,
})

/** Inches taken for centimetres, and the reverse. */
const UNITS = [2.54, 1 / 2.54]

/**
 * The deviation of each measure from which on it is spoken of: where a slip of a decimetre is the same number of
 * times likelier than chance on every measure, which finds the most slips for the few false alarms allowed.
 */
function limitsOf(expected: readonly Expected[]): number[] {
  const slips = expected.map(({ mean, sd }) => DOUBT.slip / (Math.exp(mean) * sd))
  const at = (odds: number) => slips.map((slip) => Math.min(DOUBT.most, slip / 2 + odds / slip))
  let [low, high] = [0, 12]
  for (let i = 0; i < 24; i++) {
    const odds = (low + high) / 2
    const alarms = at(odds).reduce((sum, limit) => sum + 2 * upperTail(limit), 0)
    if (alarms > DOUBT.chance) low = odds
    else high = odds
  }
  return at(high)
}

type Explained = Doubt & { gain: number }

/** The doubt that explains most, if there is one. */
function gravest({ ids, cloud, logs }: Compared, unit: LengthUnit): Doubt | undefined {
  const agreement = agreementOf(cloud, logs)
  const { expected } = agreement
  let best: Explained | undefined
  const offer = (doubt: Explained) => {
    if (best === undefined || doubt.gain > best.gain) best = doubt
  }
  const limits = limitsOf(expected)
  ids.forEach((id, i) => {
    const { mean, sd } = expected[i]!
    const off = (logs[i]! - mean) / sd
    const known = inMm(expected[i]!)
    if (Math.abs(off) <= limits[i]!) return
    const about = { measure: id, mm: Math.exp(logs[i]!), sure: Math.abs(off) > DOUBT.sure, expected: known }
    offer({ ...about, kind: 'unlikely', gain: off * off - DOUBT.near ** 2 - DOUBT.against.figure })
    for (const { mm, kind, against } of otherReadings(about.mm, unit)) {
      const left = (Math.log(mm) - mean) / sd
      if (Math.abs(left) > DOUBT.near) continue
      offer({ ...about, kind, rather: mm, gain: off * off - left * left - against })
    }
  })
  ids.forEach((id, i) => {
    for (let j = 0; j < i; j++) {
      if (!mayBeSwapped(id, ids[j]!, logs[i]!, logs[j]!)) continue
      const by = logs[j]! - logs[i]!
      const gain = -fartherBy(agreement, i, by, j, -by)
      if (gain < DOUBT.swap) continue
      const [mm, rather] = [Math.exp(logs[i]!), Math.exp(logs[j]!)]
      offer({
        ...{ measure: id, other: ids[j]!, kind: 'swapped', sure: gain > DOUBT.sure ** 2, mm, rather },
        ...{ expected: inMm(expected[i]!), gain: gain - DOUBT.against.swapped },
      })
    }
  })
  return best === undefined ? undefined : withoutGain(best)
}

const withoutGain = ({ gain: _, ...doubt }: Explained): Doubt => doubt

/** Girths change places with girths, other lengths with each other, and only where it makes a difference. */
const mayBeSwapped = (a: MeasureId, b: MeasureId, logA: number, logB: number): boolean =>
  isGirth(a) === isGirth(b) && Math.abs(logA - logB) > 0.02

type Reading = { mm: number; kind: 'unit' | 'digit'; against: number }

/** What may have been meant by a length: other units, two digits that changed places, a digit one off. */
function otherReadings(mm: number, unit: LengthUnit): Reading[] {
  const { against } = DOUBT
  const out = UNITS.map((factor): Reading => ({ mm: mm * factor, kind: 'unit', against: against.unit }))
  // A metric tape is read to the millimetre; of inches the whole ones are figures, and fractions stay with them.
  const inches = unit === 'in'
  const one = inches ? MM_PER.in : 1
  const whole = inches ? Math.floor(mm / one + 1e-6) : Math.round(mm)
  const rest = inches ? mm - whole * one : 0
  const written = String(whole)
  for (let i = 0; i + 1 < written.length; i++) {
    const turned = written.slice(0, i) + written[i + 1] + written[i] + written.slice(i + 2)
    if (turned[0] !== '0')
      out.push({ mm: Number(turned) * one + rest, kind: 'digit', against: against.digits })
  }
  for (const by of inches ? [-10, 10] : [-1000, -100, 100, 1000]) {
    if (whole + by > 0) out.push({ mm: mm + by * one, kind: 'digit', against: against.figure })
  }
  return out
}

/** Takes the measures in doubt out of a set. */
function without(set: Compared, { measure, other }: Doubt): void {
  const kept = set.ids.flatMap((id, i) => (id === measure || id === other ? [] : [i]))
  set.cloud = partOf(set.cloud, kept)
  set.logs = kept.map((i) => set.logs[i]!)
  set.ids = kept.map((i) => set.ids[i]!)
}
