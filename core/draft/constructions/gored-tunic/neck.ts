import { type Body, lengthOf } from '../../../measure/body.ts'
import { phrase } from '../../../words/phrase.ts'
import { Refusal } from '../../../words/refusal.ts'
import type { Asked } from '../../choices.ts'
import {
  BACK_DEPTH,
  BOAT_DEPTHS,
  FRONT_DEPTH,
  HEAD_EASE,
  SHORTEST_SLIT,
  SHOULDER_HOLD,
  toFives,
} from '../../practice.ts'
import { type Dip, neckPerimeter, neckWidthFor } from '../../shapes/neckline.ts'
import type { UndertunicChoices } from './choices.ts'

/** The neck opening: its width on the shoulder line, the dips of front and back, and the slit below. */
export type Neck = {
  width: number
  front: Dip
  back: Dip
  /** Round the opening without the slit. */
  perimeter: number
  slit: number
  /** The widest the opening may be and still stay on the shoulders. */
  widest: number
  /** What must pass: head girth and ease. */
  toPass: number
}

type Given = {
  panelWidth: number
  /** How far down the front the neck and its slit may reach. */
  room: number
}

/**
 * The neck opening for a body: arcs on the chord neck base girth ÷ π + ease. A keyhole stays narrow and
 * opens by its slit; the other necks widen until the head passes, as far as the shoulders allow, and get a
 * slit only for what is still lacking.
 *
 * @throws Refusal when the opening leaves no shoulder
 */
export function neckOf(
  body: Body,
  chosen: UndertunicChoices,
  asked: Asked,
  { panelWidth, room }: Given,
): Neck {
  const base = lengthOf(body, 'neckBaseGirth')!
  const widest = base / Math.PI + 2 * (lengthOf(body, 'shoulderLength')! - SHOULDER_HOLD)
  const toPass = lengthOf(body, 'headGirth')! + HEAD_EASE
  const { front, back } = dips(base, chosen)
  const narrow = base / Math.PI + chosen.neckEase
  const fixed = chosen.neck === 'keyhole' || asked.neckEase !== undefined
  const width = fixed ? narrow : neckWidthFor(toPass, narrow, Math.min(widest, panelWidth * 0.8), front, back)
  if (width > panelWidth - 2 * SHOULDER_HOLD) {
    throw new Refusal(
      phrase('refusal.draft.neckTooWide', { width: { mm: width }, panel: { mm: panelWidth } }),
      'neckEase',
    )
  }
  const perimeter = neckPerimeter(width, front, back)
  const lacking = Math.max(0, (toPass - perimeter) / 2)
  const most = room - front.depth
  const needed = Math.max(lacking, chosen.neck === 'keyhole' ? Math.min(SHORTEST_SLIT, Math.floor(most)) : 0)
  const round = toFives(needed)
  const slit = chosen.slitLength ?? (round <= most ? round : Math.ceil(needed))
  return { width, front, back, perimeter, slit, widest, toPass }
}

function dips(base: number, { neck, neckDepth }: UndertunicChoices): { front: Dip; back: Dip } {
  const depths = neck === 'boat' ? BOAT_DEPTHS : { front: base * FRONT_DEPTH, back: base * BACK_DEPTH }
  const front: Dip = { form: neck === 'square' ? 'square' : 'arc', depth: neckDepth ?? depths.front }
  return { front, back: { form: 'arc', depth: depths.back } }
}
