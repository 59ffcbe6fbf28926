import type { Body } from '../../measure/body.ts'
import { type Phrase, phrase } from '../../words/phrase.ts'
import type { LengthUnit } from '../../words/units.ts'
import { type Asked, readChoices, refuseBoth, settled } from '../choices.ts'
import { type Construction, refuseMissing } from '../construction.ts'
import { flatBody } from '../flat.ts'
import { finishedSizes } from '../names.ts'
import { MOST_FULLNESS } from '../practice.ts'
import { totalsOf } from '../seams.ts'
import type { ChoiceValue, Draft, Flat } from '../types.ts'
import { assertSewable } from '../verify.ts'
import { CHOICES } from './gored-undertunic/choices.ts'
import { facings } from './gored-undertunic/facings.ts'
import { type Figures, figuresOf } from './gored-undertunic/figures.ts'
import { fitReport } from './gored-undertunic/fit-report.ts'
import { gores } from './gored-undertunic/gores.ts'
import { panels } from './gored-undertunic/panels.ts'
import { hemsOf, seamsOf } from './gored-undertunic/sewn.ts'
import { sleeves } from './gored-undertunic/sleeves.ts'
import { stepsOf } from './gored-undertunic/steps.ts'

/**
 * A tunic of straight panels, tapered sleeves, square underarm gussets and gores from the waist: the
 * under-layer of the eleventh to fourteenth centuries in much of Europe, and outer tunics on the same cut.
 */
export const goredUndertunic: Construction = {
  id: 'goredUndertunic',
  // From memory; to be held against the books.
  sources: [
    'E. Crowfoot, F. Pritchard, K. Staniland: Textiles and Clothing c.1150–c.1450',
    'E. Østergård: Woven into the Earth',
    'D. K. Burnham: Cut My Cote',
  ],
  required: [
    ['bustGirth', 'chestGirth'],
    ['waistGirth'],
    ['hipGirth'],
    ['upperArmGirth'],
    ['handGirth'],
    ['headGirth'],
    ['neckBaseGirth'],
    ['shoulderLength'],
    ['armLength', 'cervicalToWristLength'],
    ['cervicalHeight'],
    ['waistHeight'],
  ],
  useful: [
    'stature',
    'hipHeight',
    'insideLegHeight',
    'kneeHeight',
    'calfGirth',
    'forearmGirth',
    'elbowGirth',
  ],
  choices: CHOICES,
  often: ['hemLevel', 'length', 'chestEase', 'neck', 'sleeve', 'gores', 'sweep'],
  finishPlan: 'machineWhereHidden',
  draft,
  describe,
}

function draft(body: Body, asked: Asked, unit: LengthUnit): Draft {
  refuseMissing(goredUndertunic, body)
  refuseBoth(asked, 'hemLevel', 'length')
  refuseBoth(asked, 'goreSpread', 'sweep')
  refuseBoth(asked, 'sleeve', 'sleeveLength')
  const figures = figuresOf(body, readChoices(CHOICES, asked, unit), asked)
  const pieces = [...panels(figures), ...sleeves(figures), ...gores(figures), ...facings(figures)]
  const seams = seamsOf(figures, pieces)
  const hems = hemsOf(figures, pieces)
  return assertSewable({
    construction: goredUndertunic.id,
    choices: used(figures),
    pieces,
    seams,
    hems,
    steps: stepsOf(figures, pieces, seams, hems),
    fit: fitReport(figures, body),
    cautions: cautionsOf(figures),
    notions: [],
    flat: flatOf(figures),
    sizes: sizesOf(figures),
    totals: totalsOf(pieces, seams, hems),
  })
}

/** Every choice with the value used, what was worked out from the body included. */
function used(f: Figures): Record<string, ChoiceValue> {
  const { hemLevel, sleeve, ...chosen } = f.chosen
  const level = f.chosen.length === undefined ? { hemLevel } : {}
  const reach = f.chosen.sleeveLength === undefined ? { sleeve } : {}
  return settled({
    ...level,
    ...reach,
    ...chosen,
    length: f.length,
    neckDepth: f.neck.front.depth,
    slitLength: f.neck.slit,
    gusset: f.gusset,
    sleeveLength: f.sleeve.length,
    wristWidth: f.sleeve.wrist,
    goreTop: f.chosen.goreTop ?? 'waist',
    goreSpread: f.skirt.radius * f.skirt.angle,
    sweep: f.skirt.sweep,
    bottomHem: f.hems.bottom.depth,
  })
}

const sizesOf = (f: Figures): Draft['sizes'] =>
  finishedSizes({
    ...{
      length: f.length,
      chest: 2 * f.width,
      sweep: f.skirt.sweep,
      backToWrist: f.width / 2 + f.sleeve.length,
    },
    ...{ wrist: f.sleeve.wrist, neck: f.neck.perimeter + 2 * f.neck.slit },
  })

const flatOf = (f: Figures): Flat =>
  flatBody({
    ...{ half: f.width / 2, length: f.length, slope: f.slope, neck: f.neck, slit: f.neck.slit },
    ...{ armhole: f.armhole, gusset: f.gusset, sleeve: f.sleeve },
    // A whole side gore is folded along its middle; of two gores that meet there each is seen whole.
    skirt: {
      from: f.skirt.goreTop,
      angle: f.skirt.gores === 2 ? f.skirt.angle / 2 : f.skirt.angle,
      middle: f.skirt.gores > 4,
    },
  })

function describe({ choices, sizes }: Draft): Phrase[] {
  const mm = (id: string) => ({ mm: sizes.find((size) => size.id === id)!.mm })
  const finish = phrase(choices.neckFinish === 'facing' ? 'draft.describe.faced' : 'draft.describe.rolled')
  const tapered = choices.taper === true ? 'tapered' : 'straight'
  return [
    phrase('draft.describe.undertunic', { length: mm('length'), chest: mm('chest') }),
    phrase(`draft.describe.neck.${choices.neck as 'keyhole' | 'round' | 'boat' | 'square'}`, {
      slit: { mm: choices.slitLength as number },
      finish,
    }),
    phrase(`draft.describe.sleeves.${tapered}`, { reach: mm('backToWrist'), wrist: mm('wrist') }),
    phrase('draft.describe.gores', { gores: choices.gores as number, sweep: mm('sweep') }),
  ]
}

/** Hems nearer to the floor than this trail by the fire and on the stairs (common practice), mm. */
const TRAILING = 120

function cautionsOf(f: Figures): Phrase[] {
  const { routesDiffer } = f.sleeve
  return [
    ...(routesDiffer === undefined
      ? []
      : [phrase('draft.caution.armRoutes', { difference: { mm: routesDiffer } })]),
    ...(f.goreLowered ? [phrase('draft.caution.goreLowered', { top: { mm: f.skirt.goreTop } })] : []),
    ...(f.hems.bottom.fullness > MOST_FULLNESS + 1e-9
      ? [phrase('draft.caution.hemPuckers', { depth: { mm: f.hems.bottom.depth } })]
      : []),
    ...(f.levels.cervicalHeight - f.length < TRAILING ? [phrase('draft.caution.trailing')] : []),
    phrase('draft.caution.flame'),
  ]
}
