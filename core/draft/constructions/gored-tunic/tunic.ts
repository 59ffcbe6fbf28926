import type { Body } from '../../../measure/body.ts'
import { type Phrase, phrase } from '../../../words/phrase.ts'
import { hangingCautions } from '../../cautions.ts'
import { type Asked, refuseBoth, settled } from '../../choices.ts'
import { flatBody } from '../../flat.ts'
import { finishedSizes } from '../../names.ts'
import { assembled } from '../../parts/assembly.ts'
import { liningOf } from '../../parts/lining.ts'
import { totalsOf } from '../../seams.ts'
import type { ChoiceValue, Draft, Flat, Hem, Notion } from '../../types.ts'
import { assertSewable } from '../../verify.ts'
import type { UndertunicChoices } from './choices.ts'
import { facings } from './facings.ts'
import { type Figures, figuresOf } from './figures.ts'
import { fitReport } from './fit-report.ts'
import { gores } from './gores.ts'
import { type Openings, opened } from './openings.ts'
import { panels } from './panels.ts'
import { hemsOf, seamsOf } from './sewn.ts'
import { sleeves } from './sleeves.ts'
import { stepsOf } from './steps.ts'

/** What an outer tunic has beyond the shirt beneath it. */
export type Extras = Openings & { lined: boolean; notions: Notion[]; buttons: number }
export const NO_EXTRAS: Extras = { forearm: 0, side: 0, lined: false, notions: [], buttons: 0 }

/** Refuses what is said in two ways of any gored tunic. */
export function refuseTwice(asked: Asked): void {
  refuseBoth(asked, 'hemLevel', 'length')
  refuseBoth(asked, 'goreSpread', 'sweep')
  refuseBoth(asked, 'sleeve', 'sleeveLength')
}

/**
 * A gored tunic for a body, with what an outer one has besides.
 * @throws Refusal when body and choices make no garment
 */
export function draftTunic(
  construction: string,
  body: Body,
  chosen: UndertunicChoices,
  asked: Asked,
  extras: Extras,
): Draft {
  const figures = figuresOf(body, chosen, asked)
  const cut = [...panels(figures), ...sleeves(figures), ...gores(figures), ...facings(figures)]
  const outer = opened(
    { pieces: cut, seams: seamsOf(figures, cut), hems: hemsOf(figures, cut) },
    figures,
    extras,
  )
  const lining = extras.lined
    ? [
        liningOf(
          outer,
          cut.map(({ id }) => id),
        ),
      ]
    : []
  const { pieces, seams, hems } = assembled([outer, ...lining])
  return assertSewable({
    ...{ construction, choices: used(figures), pieces, seams, hems },
    steps: stepsOf(figures, { pieces, seams, hems }, extras),
    ...{ fit: fitReport(figures, body), cautions: cautionsOf(figures, outer.hems), notions: extras.notions },
    ...{ flat: flatOf(figures), sizes: sizesOf(figures), totals: totalsOf(pieces, seams, hems) },
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

/** A tunic in words for the client. */
export function describeTunic({ choices, sizes }: Draft): Phrase[] {
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

function cautionsOf(f: Figures, hems: readonly Hem[]): Phrase[] {
  const { routesDiffer } = f.sleeve
  return [
    ...(routesDiffer === undefined
      ? []
      : [phrase('draft.caution.armRoutes', { difference: { mm: routesDiffer } })]),
    ...(f.goreLowered ? [phrase('draft.caution.goreLowered', { top: { mm: f.skirt.goreTop } })] : []),
    ...hangingCautions(hems, f.levels.cervicalHeight - f.length),
  ]
}
