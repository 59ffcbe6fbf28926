import { CONSTRUCTIONS, draftGarment } from '../../core/draft/constructions.ts'
import { asCut } from '../../core/lay/as-cut.ts'
import { faultsOfLay } from '../../core/lay/check.ts'
import { firstLay } from '../../core/lay/first-lay.ts'
import { purchaseOf } from '../../core/lay/purchase.ts'
import { lengthsOf } from '../../core/measure/body.ts'
import { doubtsOf } from '../../core/measure/doubts.ts'
import { alternativesOf } from '../../core/price/alternatives.ts'
import { type Cut, estimate, reckoned, type Wanted } from '../../core/price/estimate.ts'
import { FINISH_PLANS } from '../../core/sew/finish-plans.ts'
import { learn } from '../../core/sew/pace/learn.ts'
import { sew } from '../../core/sew/sewing.ts'
import { entriesOf } from '../../core/sew/work.ts'
import { DEFAULT_SETTINGS } from '../../core/workroom/default-settings.ts'
import { middlingBody as body, stratifiedBodies } from './bodies.ts'
import { paperTimings } from './papers.ts'
import { safekeepingTimings } from './safekeeping.ts'
import { scaleTimings, withYears } from './scale.ts'
import { screenTimings } from './screen.ts'
import { startTimings } from './start.ts'
import { runsOf, type Timing, timed } from './timing.ts'

/** `npm run bench [-- --json] [-- --brief]`: how long the computation takes on this machine. */

const cloth = {
  ...{
    name: 'linen',
    width: 1500,
    selvedge: 0,
    warpShrinkage: 0.05,
    weftShrinkage: 0.03,
    rightSide: false,
    nap: false,
  },
  ...{ thickness: 0.4, increment: 100, pricePerMetre: { minor: 1650, currency: 'GBP' } },
}
/** Cloth of which the whole width is used. */
const USABLE = { ...cloth, width: 1400, warpShrinkage: 0, weftShrinkage: 0 }
const { buying, threadRules, threadStock, rates } = DEFAULT_SETTINGS
const habits = { unit: 'cm' as const, buying, threadRules, threadStock, rates }

/** One choice after another, as a maker tries them at the quote desk. */
const trials = Array.from({ length: 200 }, (_, i): Record<string, string | number | boolean> => {
  const options = [
    { chestEase: 80 + ((i * 7) % 160) },
    { length: 900 + ((i * 13) % 420) },
    { gores: [2, 4, 6, 8][(i / 8) & 3]! },
    { neck: ['keyhole', 'round', 'boat', 'square'][(i / 8) & 3]! },
    { gusset: 60 + ((i * 5) % 90) },
    { goreSpread: 220 + ((i * 11) % 160) },
    { seamFinish: i % 16 < 8 ? 'felled' : 'open' },
    { hemLevel: ['knee', 'midCalf', 'ankle'][((i / 8) % 3) | 0]! },
  ]
  return options[i % options.length]!
})
const drafts = trials.map((choices) => draftGarment('goredUndertunic', body, choices, 'mm'))
const lays = drafts.map(({ pieces }) => firstLay(pieces, cloth, buying))

const tunic: Wanted = {
  ...{ construction: 'goredUndertunic', body, choices: {}, cloth, finishPlan: 'machineWhereHidden' },
}
const narrow = { id: 'narrow', cloth: { ...cloth, width: 1143 } }
/** Garments that may be lined, each several times. */
const linable = CONSTRUCTIONS.filter(({ choices }) => 'lined' in choices).flatMap(({ id }) =>
  Array.from({ length: 10 }, () => id),
)
/** A draft with its first lay, for what is reckoned after it. */
function cutAs(draft: (typeof drafts)[number], i: number): [Cut, Wanted] {
  const lay = lays[i]!
  return [{ draft, lay, purchase: purchaseOf(lay, cloth, buying), others: [] }, tunic]
}
/** Tunics, each step logged a little off its standard: as many times as teach at the most. */
const logged = Array.from({ length: 53 }, (_, garment) =>
  sew(drafts[garment]!, FINISH_PLANS.machineWhereHidden, 0.4, threadRules).steps.map(({ work = {} }, i) => ({
    id: `${garment}-${i}`,
    minutes:
      entriesOf(work).reduce((sum, [, minutes]) => sum + minutes, 0) * (1 + ((garment + 3 * i) % 7) / 10),
    daysAgo: 14 * garment,
    steps: [work],
  })),
).flat()

const timings: Timing[] = [
  timed('change of one choice: draft, lay, check, thread, hours, price', trials, (choices) =>
    estimate(
      { construction: 'goredUndertunic', body, choices, cloth, finishPlan: 'machineWhereHidden' },
      habits,
    ),
  ),
  timed('draft', trials, (choices) => draftGarment('goredUndertunic', body, choices, 'mm')),
  timed('first lay, 12–16 pieces on 150 cm', drafts, ({ pieces }) => firstLay(pieces, cloth, buying)),
  timed('first lay, on 91.4 cm', drafts, ({ pieces }) =>
    firstLay(pieces, { ...cloth, width: 914.4 }, buying),
  ),
  timed('independent check of a lay', lays, (lay) =>
    faultsOfLay(lay, drafts[lays.indexOf(lay)]!.pieces, cloth),
  ),
  timed('a set of measures looked over', lays, () => doubtsOf(lengthsOf(body), 'women')),
  timed('sewing', drafts, (draft) => sew(draft, FINISH_PLANS.allByHand, 0.4, threadRules)),
  timed('thread, hours with their spread, price and its odds', drafts.map(cutAs), ([cut, wanted]) =>
    reckoned(cut, wanted, habits),
  ),
  timed('all alternatives: three ways of sewing, two cloths, lined and not', linable, (construction) =>
    alternativesOf({ ...tunic, construction }, [narrow], habits),
  ),
  timed('learning from 800 logged times', trials.slice(0, 10), () => learn(logged), 2),
]
for (const one of CONSTRUCTIONS)
  timings.push(timed(`draft, ${one.id}`, stratifiedBodies, (stratified) => one.draft(stratified, {}, 'mm')))
timings.push(...(await paperTimings()), ...(await screenTimings()), ...(await safekeepingTimings()))
timings.push(
  ...(await withYears(async (years) => [...(await scaleTimings(years)), ...(await startTimings(years))])),
)
// An alteration is cut from nothing.
const cut = CONSTRUCTIONS.filter((one) => one.draft(body, {}, 'mm').pieces.length > 0)
const cloths = cut.map((construction) => {
  const found = stratifiedBodies.slice(0, runsOf(stratifiedBodies.length)).map((one) => {
    const { pieces } = asCut(construction.draft(one, {}, 'mm'), USABLE)
    const { length, used } = firstLay(pieces, USABLE, buying)
    return { length, used }
  })
  const used = found.map((lay) => lay.used).sort((a, b) => a - b)
  const metres = (lengths: number[]) => lengths.reduce((sum, length) => sum + length, 0) / 1000
  return {
    construction: construction.id,
    bodies: used.length,
    ...{ usedLeast: used[0]!, usedMedian: used[used.length >> 1]! },
    // No lay is shorter than the pieces' area over the width.
    metres: metres(found.map(({ length }) => length)),
    boundMetres: metres(found.map((lay) => lay.length * lay.used)),
  }
})

if (process.argv.includes('--json')) {
  console.log(JSON.stringify({ node: process.version, timings, cloth: cloths }))
} else {
  console.log(`${'ms'.padStart(67)} p50      p95    worst  p95 in kernels`)
  for (const { name, p50, p95, worst, inKernels } of timings) {
    const figures = [p50, p95, worst].map((ms) => ms.toFixed(1).padStart(9)).join('')
    console.log(`${name.padEnd(62)}${figures}${inKernels.toFixed(2).padStart(16)}`)
  }
  for (const { construction, bodies, usedLeast, usedMedian, metres, boundMetres } of cloths) {
    console.log(
      `first lays of ${construction} for ${bodies} bodies on ${USABLE.width} mm: ${(100 * usedMedian).toFixed(1)} % of the cloth used, ` +
        `${(100 * usedLeast).toFixed(1)} % at least; ${metres.toFixed(1)} m in all, ${boundMetres.toFixed(1)} m by area alone`,
    )
  }
}
