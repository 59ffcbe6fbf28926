import type { Body } from '../../measure/body.ts'
import { phrase } from '../../words/phrase.ts'
import type { LengthUnit } from '../../words/units.ts'
import { type Asked, type Choices, readChoices } from '../choices.ts'
import type { Construction } from '../construction.ts'
import { makingOf, work, worthDoing } from '../making.ts'
import { named } from '../names.ts'
import { edgesOn, totalsOf, turnedHem } from '../seams.ts'
import { rectangle } from '../shapes/rectangle.ts'
import type { Draft, Hem, HemKind, Notion, Seam, SeamFinish } from '../types.ts'
import { assertSewable } from '../verify.ts'

const COUNTS = [0, 1, 2, 3, 4, 6, 8, 12] as const

const CHOICES = {
  unpicked: { kind: 'length', range: [0, 40000], default: 0 },
  seamsResewn: { kind: 'length', range: [0, 40000], default: 0 },
  seamFinish: { kind: 'option', options: ['felled', 'open'], default: 'open' },
  hemsResewn: { kind: 'length', range: [0, 40000], default: 0 },
  patches: { kind: 'count', options: COUNTS, default: 0 },
  patchSide: { kind: 'length', range: [30, 400], default: 100 },
  darns: { kind: 'count', options: COUNTS, default: 0 },
  buttonsSewn: { kind: 'count', options: COUNTS, default: 0 },
  eyeletsWorked: { kind: 'count', options: COUNTS, default: 0 },
} as const satisfies Choices

const TURNED_IN = 8

/**
 * Work on a garment that is there already: seams unpicked and sewn again, hems taken up, patches, darns, buttons.
 * Nothing is drafted to a body; what is cut are the patches.
 */
export const alteration: Construction = {
  ...{ id: 'alteration', sources: [], required: [], useful: [], choices: CHOICES },
  often: ['unpicked', 'seamsResewn', 'hemsResewn', 'patches', 'darns', 'buttonsSewn'],
  finishPlan: 'allByHand',
  draft,
  describe: ({ choices }) => [
    ...(['unpicked', 'seamsResewn', 'hemsResewn'] as const)
      .filter((id) => (choices[id] as number) > 0)
      .map((id) => phrase(`draft.describe.alteration.${id}`, { length: { mm: choices[id] as number } })),
    ...(['patches', 'darns', 'buttonsSewn', 'eyeletsWorked'] as const)
      .filter((id) => (choices[id] as number) > 0)
      .map((id) => phrase(`draft.describe.alteration.${id}`, { count: choices[id] as number })),
    phrase('draft.describe.alteration'),
  ],
}

function draft(_: Body, asked: Asked, unit: LengthUnit): Draft {
  const chosen = readChoices(CHOICES, asked, unit)
  const { patches, patchSide, darns, buttonsSewn, eyeletsWorked } = chosen
  const copies = Array.from({ length: patches }, (_, i) => ({
    ...{ id: `patch${i + 1}`, name: phrase('draft.piece.patchNumber', { number: i + 1 }), mirrored: false },
  }))
  const pieces =
    patches === 0
      ? []
      : [
          rectangle(
            'patch',
            { width: patchSide, length: patchSide, added: { allowance: TURNED_IN } },
            { copies, turn: [0, 90, 180, 270], sizes: { square: patchSide } },
          ),
        ]
  const edge = edgesOn(pieces)
  const seams = chosen.seamsResewn > 0 ? [resewn(chosen.seamsResewn, chosen.seamFinish)] : []
  const hems = [
    ...copies.map(({ id }) =>
      turnedHem({
        ...{ id, kind: 'laidOn', name: named('hem', 'patch'), depth: TURNED_IN, allowance: TURNED_IN },
        spans: ['bottom', 'right', 'top', 'left'].map((side) => edge('patch', side, id)),
      }),
    ),
    ...(chosen.hemsResewn > 0 ? [hemAlone('resewn', 'bottom', chosen.hemsResewn)] : []),
  ]
  const { step, sewing, hemming, before, after } = makingOf(pieces, seams, hems)
  const notions: Notion[] = buttonsSewn > 0 ? [{ notion: 'button', count: buttonsSewn }] : []
  return assertSewable({
    ...{ construction: alteration.id, choices: chosen, pieces, seams, hems },
    steps: worthDoing([
      ...(patches > 0 ? before : []),
      step(
        'unpick',
        'prepare',
        chosen.unpicked > 0 ? [work('unpick', chosen.unpicked / 1000)] : [],
        undefined,
        ['blades'],
      ),
      step(
        'resew',
        'sew',
        [],
        sewing(() => true),
      ),
      step(
        'patch',
        'sew',
        [],
        hemming(({ kind }) => kind === 'laidOn'),
      ),
      step('darn', 'sew', darns > 0 ? [work('darn', darns)] : []),
      step(
        'bottom',
        'hem',
        [],
        hemming(({ kind }) => kind === 'bottom'),
      ),
      step('buttons', 'finish', [
        ...(buttonsSewn > 0 ? [work('sewButton', buttonsSewn)] : []),
        ...(eyeletsWorked > 0 ? [work('workEyelet', eyeletsWorked)] : []),
      ]),
      ...(patches > 0
        ? after
        : [step('finishAlteration', 'finish', [work('tryOn', 1), work('pack', 1)], undefined, ['needles'])]),
    ]),
    ...{ fit: [], cautions: [phrase('draft.caution.dust')], notions, sizes: [] },
    totals: totalsOf(pieces, seams, hems),
  })
}

/** A seam of a garment that is there: a length to sew, whose edges nobody drafted. */
const resewn = (length: number, finish: SeamFinish): Seam => ({
  ...{
    id: 'resewn-seams',
    kind: 'side',
    name: named('seam', 'resewn'),
    a: [],
    b: [],
    ratio: 1,
    finish,
    length,
  },
})

const hemAlone = (id: string, kind: HemKind, length: number): Hem => ({
  ...{ id: `${id}-hems`, kind, name: named('hem', id), spans: [], length },
  ...{ depth: TURNED_IN, allowance: 0, seen: true, fullness: 0 },
})
