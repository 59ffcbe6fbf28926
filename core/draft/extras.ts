import { pathBox } from '../geometry/segment.ts'
import type { Body } from '../measure/body.ts'
import { type Phrase, phrase } from '../words/phrase.ts'
import { Refusal } from '../words/refusal.ts'
import type { LengthUnit } from '../words/units.ts'
import type { Asked } from './choices.ts'
import { type Construction, refuseMissing } from './construction.ts'
import { chestOf } from './fit-trunk.ts'
import { levelsOf } from './levels.ts'
import { makingOf, work } from './making.ts'
import { named } from './names.ts'
import { makePiece, withSlits } from './pieces.ts'
import { edgesOn, totalsOf, turnedHem } from './seams.ts'
import type { Draft, Piece, Slit, Step } from './types.ts'
import { assertSewable } from './verify.ts'

/** What a client also asks for, of whatever garment. Lengths in mm. */
export type Extras = {
  /** Tucks above the hem, to be let down when the wearer has grown: how many, and how deep each is folded. */
  growthTucks?: { count: number; depth: number } | undefined
  /** Cloth left in the side seams beyond their allowance, to let them out. */
  inlay?: number | undefined
  /** A slit on each side of the breast. */
  nursingSlits?: boolean | undefined
  /** Ids of the hems that have a trim sewn along them. */
  trim?: readonly string[] | undefined
}

/** The choices by which garments are made longer. */
const LENGTHS = ['length', 'skirtLength', 'backLength', 'cloakLength', 'dressLength']
/** Trim bought beyond the edge it goes on, parts of one (common practice). */
const TRIM_SPARE = 0.05

/**
 * A garment with what the client asks for besides, all of it counted in cloth, thread and time.
 * @throws Refusal at `extras.<id>` where the garment has no place for it
 */
export function draftWithExtras(
  construction: Construction,
  body: Body,
  choices: Asked,
  unit: LengthUnit,
  extras: Extras,
): Draft {
  const { growthTucks, inlay = 0, nursingSlits = false, trim = [] } = extras
  let draft =
    growthTucks === undefined || growthTucks.count === 0
      ? construction.draft(body, choices, unit)
      : withTucks(construction, body, choices, unit, growthTucks)
  if (inlay > 0) draft = withInlay(draft, inlay)
  if (nursingSlits) draft = withNursingSlits(draft, body)
  return trim.length > 0 ? withTrim(draft, trim) : draft
}

/** In words for the client, one phrase a sentence. */
export function describeExtras(
  { growthTucks, inlay = 0, nursingSlits, trim = [] }: Extras,
  draft: Draft,
): Phrase[] {
  return [
    ...(growthTucks === undefined || growthTucks.count === 0
      ? []
      : [phrase('draft.extra.tucks', { count: growthTucks.count, depth: { mm: growthTucks.depth } })]),
    ...(inlay > 0 ? [phrase('draft.extra.inlay', { inlay: { mm: inlay } })] : []),
    ...(nursingSlits === true ? [phrase('draft.extra.nursing')] : []),
    ...draft.hems
      .filter(({ id }) => trim.includes(id))
      .map(({ name }) => phrase('draft.extra.trim', { hem: name })),
  ]
}

/** Drafted longer by what the tucks fold away; worn, it is as long as without them. */
function withTucks(
  construction: Construction,
  body: Body,
  choices: Asked,
  unit: LengthUnit,
  { count, depth }: { count: number; depth: number },
): Draft {
  const id = LENGTHS.find((one) => one in construction.choices)
  if (id === undefined) throw new Refusal(phrase('refusal.draft.noTucks'), 'extras.growthTucks')
  refuseMissing(construction, body)
  const worn = construction.draft(body, choices, unit)
  const { hemLevel: _, ...rest } = choices
  const finished = worn.choices[id] as number
  const long = construction.draft(body, { ...rest, [id]: finished + 2 * depth * count }, unit)
  const sweep = long.totals.hems.bottom ?? 0
  const floor = worn.fit.find((check) => check.id === 'floor')
  const { step } = makingOf(long.pieces, long.seams, long.hems)
  const tucks = step('growthTucks', 'hem', [work('growthTuck', (sweep * count) / 1000)])
  return {
    ...long,
    choices: worn.choices,
    sizes: long.sizes.map(
      (size) => worn.sizes.find((one) => one.id === size.id && LENGTH_SIZES.includes(one.id)) ?? size,
    ),
    fit: long.fit.map((check) => (check.id === 'floor' && floor !== undefined ? floor : check)),
    ...(worn.flat === undefined ? {} : { flat: worn.flat }),
    steps: beforeFinish(long.steps, tucks),
  }
}

const LENGTH_SIZES = ['length', 'skirtLength', 'neckToHem', 'armpitToHem']

/** Side seams, and where gores meet in them, with more cloth left inside. */
function withInlay(draft: Draft, inlay: number): Draft {
  const kinds = ['side', 'goreToGore', 'underarm']
  const let_ = new Set(
    draft.seams
      .filter(({ kind }) => kinds.includes(kind))
      .flatMap(({ a, b }) => [...a, ...b])
      .map(({ piece, edge }) => `${piece}/${edge}`),
  )
  if (let_.size === 0) throw new Refusal(phrase('refusal.draft.noInlay'), 'extras.inlay')
  const pieces = draft.pieces.map((piece) => {
    const sides = (on: string) =>
      piece.edges
        .filter((edge) => edge.on === on)
        .map((edge) => ({
          ...edge,
          allowance: edge.allowance + (let_.has(`${piece.id}/${edge.id}`) ? inlay : 0),
        }))
    const { outline: _, cut: __, edges: ___, openings, slits, ...rest } = piece
    return makePiece(rest, {
      sides: sides('outline'),
      openings: openings.map(({ id }) => ({ id, sides: sides(id) })),
      slits,
    })
  })
  return assertSewable({ ...draft, pieces })
}

/** Slits lie so far from the middle ÷ chest, from above the armpit down, and are so long (common practice). */
const NURSING = { aside: 0.11, above: 30, length: 160, allowance: 6, hem: 4 }

function withNursingSlits(draft: Draft, body: Body): Draft {
  const fronts = ['front', 'body', 'lining-front', 'lining-body']
  const { cervicalHeight, waistHeight } = body.measures
  const known = cervicalHeight !== undefined && waistHeight !== undefined && chestOf(body) > 0
  const slit = (piece: Piece): Slit[] => {
    const neck = piece.edges.find(({ id }) => id === 'neck')?.path[0]
    if (neck === undefined) return []
    const top = neck.from.y - levelsOf(body).armpit + NURSING.above
    const [x, middle] = [chestOf(body) * NURSING.aside, top - NURSING.length / 2]
    const box = pathBox(piece.outline)
    if (top - NURSING.length < box.y + NURSING.length || x > box.width / 2 - 40) return []
    return ([-1, 1] as const).flatMap((hand) => {
      const at = (y: number) => ({ x: hand * x, y })
      const id = hand < 0 ? 'nursingRight' : 'nursingLeft'
      const shared = { open: at(middle), allowance: NURSING.allowance }
      return [
        { ...shared, id: `${id}Up`, apex: at(top) },
        { ...shared, id: `${id}Down`, apex: at(top - NURSING.length) },
      ]
    })
  }
  const made = new Map(
    (known ? draft.pieces : [])
      .filter(({ id }) => fronts.includes(id))
      .map((piece) => [piece.id, slit(piece)]),
  )
  if (![...made.values()].some((slits) => slits.length > 0))
    throw new Refusal(phrase('refusal.draft.noNursing'), 'extras.nursingSlits')
  const pieces = draft.pieces.map((piece) => withSlits(piece, made.get(piece.id) ?? []))
  const edge = edgesOn(pieces)
  const hems = [...made].flatMap(([id, slits]) =>
    slits.map((one) =>
      turnedHem({
        ...{
          id: `${id}-${one.id}`,
          kind: 'slit',
          name: named('hem', 'nursing'),
          depth: NURSING.hem,
          seen: false,
        },
        ...{ allowance: NURSING.allowance, spans: [edge(id, `${one.id}Right`), edge(id, `${one.id}Left`)] },
      }),
    ),
  )
  const all = [...draft.hems, ...hems]
  const { step } = makingOf(pieces, draft.seams, all)
  const ids = { seams: [], hems: hems.map(({ id }) => id) }
  const sewn = step('nursing', 'hem', [work('reinforceSlit', 4)], ids)
  return assertSewable({
    ...{ ...draft, pieces, hems: all, steps: beforeFinish(draft.steps, sewn) },
    totals: totalsOf(pieces, draft.seams, all),
  })
}

function withTrim(draft: Draft, trim: readonly string[]): Draft {
  const hems = draft.hems.filter(({ id }) => trim.includes(id))
  if (hems.length < new Set(trim).size) throw new Refusal(phrase('refusal.draft.noTrim'), 'extras.trim')
  const length = hems.reduce((sum, hem) => sum + hem.length, 0)
  const { step } = makingOf(draft.pieces, draft.seams, draft.hems)
  const sewn = step('trim', 'finish', [work('sewTrim', length / 1000)])
  return {
    ...draft,
    notions: [...(draft.notions ?? []), { notion: 'trim', mm: length * (1 + TRIM_SPARE) }],
    steps: beforeFinish(draft.steps, sewn),
  }
}

/** A step put in before the last pressing. */
const beforeFinish = (steps: readonly Step[], step: Step): Step[] => [
  ...steps.slice(0, -1),
  step,
  ...steps.slice(-1),
]
