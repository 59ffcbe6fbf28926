import { z } from 'zod'
import { OPERATION } from '../sew/operations.ts'
import { numberOf } from '../sew/pace/pace.ts'
import { ownStandard } from '../sew/pace/standards.ts'
import { factorAt } from '../sew/pace/time-of.ts'
import { minutesOf } from '../sew/sewing.ts'
import { STITCH } from '../sew/stitches.ts'
import type { Standards } from '../sew/types.ts'
import { entriesOf, familyOf, isStitch, sumWork, WORK_IDS, type WorkId } from '../sew/work.ts'
import { getCommission } from '../store/commissions.ts'
import { getTime, stepsById } from '../store/times.ts'
import { phrase } from '../words/phrase.ts'
import type { StitchId } from '../words/stitches.ts'
import { type Known, knownPace } from './pace.ts'
import { type Context, request } from './request.ts'
import { settingsOf } from './settings.ts'

/** Nine in ten of a normal distribution lie above its mean less so many standard deviations. */
const Z90 = 1.2815515655446004
/** A time whose odds of being right are less is shown as doubtful. */
const DOUBTFUL = 0.5
/** A time is a point on a kind's picture when at least this part of it was that kind of work. */
const MOSTLY = 0.6

/** How long work takes: what is standard, what was learnt, and what the maker sets herself. */
export const rateRequests = [
  request({
    name: 'rates.list',
    kind: 'query',
    about:
      'How long each kind of work takes: the standard, what was learnt, and on how many hours that rests.',
    input: z.strictObject({}),
    run: (_, context) => {
      const known = knownPace(context)
      return {
        rates: WORK_IDS.map((id) => rateOf(id, known, context)),
        doubtful: doubtfulIn(known, context),
        hours: known.taught.reduce((sum, { of }) => sum + of.minutes, 0) / 60,
        step: known.learnt.pace.step,
      }
    },
  }),
]

/** Minutes of the catalogue for one unit of a kind of work, a metre of a stitch. */
const unitMinutes = (id: WorkId, ways: Standards): number =>
  isStitch(id) ? perMetreOf(id, ways) / STITCH[id].pace : minutesOf(id, ways)

/** Stitches to the metre. */
const perMetreOf = (id: StitchId, { density }: Pick<Standards, 'density'>): number =>
  100 * (density[id] ?? STITCH[id].density)

/** One kind of work: standard and own minutes for a unit, the middle 80 % of what hers may be, and its logged times. */
function rateOf(id: WorkId, { learnt: { pace }, taught }: Known, context: Context) {
  const { ways } = settingsOf(context)
  const unit = unitMinutes(id, ways)
  const k = numberOf(id)
  const sd = Math.sqrt(pace.covariance[k]![k]!)
  const middle = pace.mean[k]! + pace.step ** 2 / 2
  const minutes = taught.reduce(
    (sum, { of, judged }) => sum + judged.right * of.minutes * (judged.shares.get(id) ?? 0),
    0,
  )
  return {
    id,
    name: isStitch(id) ? phrase(`sew.stitch.${id}`) : phrase(`sew.operation.${id}`),
    unit: phrase(`sew.unit.${isStitch(id) ? 'metre' : OPERATION[id].unit}`),
    per: phrase(`times.per.${isStitch(id) ? 'metre' : OPERATION[id].unit}`),
    family: familyOf(id),
    /** Stitches to the metre, by which a standard becomes a number of stitches a minute; null where there are none. */
    perMetre: isStitch(id) ? perMetreOf(id, ways) : null,
    standard: unit * ownStandard(id, ways),
    /** Whether the standard is the maker's own. */
    set: isStitch(id) ? ways.perMinute[id] !== undefined : ways.minutes[id] !== undefined,
    hers: unit * factorAt(pace, id),
    least: unit * Math.exp(middle - Z90 * sd),
    most: unit * Math.exp(middle + Z90 * sd),
    hours: minutes / 60,
    points: taught.flatMap(({ of, judged, steps }) => {
      if ((judged.shares.get(id) ?? 0) < MOSTLY) return []
      const all = entriesOf(sumWork(steps)).reduce((sum, [, one]) => sum + one, 0)
      return [{ day: of.day, minutes: (unit * of.minutes) / all, right: judged.right }]
    }),
  }
}

/** Times that look wrong, the most doubtful first: each with what was expected in its place. */
function doubtfulIn({ taught }: Known, { store: { db } }: Context) {
  return taught
    .filter(({ judged }) => judged.right < DOUBTFUL)
    .sort((a, b) => a.judged.right - b.judged.right)
    .map(({ of, judged }) => {
      const times = of.times.map(({ id }) => getTime(db, id))
      const steps = [...stepsById(db, of.stepIds).values()]
      return {
        times: times.map(({ id, revision, day, minutes, note }) => ({ id, revision, day, minutes, note })),
        minutes: of.minutes,
        expected: judged.expected,
        right: judged.right,
        commission: getCommission(db, times[0]!.commissionId).number,
        commissionId: times[0]!.commissionId,
        steps: steps.sort((a, b) => a.position - b.position).map(({ name }) => name),
      }
    })
}
