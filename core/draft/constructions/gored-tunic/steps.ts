import { makingOf, work, worthDoing } from '../../making.ts'
import type { Assembly } from '../../parts/assembly.ts'
import { inLining } from '../../parts/lining.ts'
import type { Hem, Seam, Step } from '../../types.ts'
import type { Figures } from './figures.ts'

/** The making, step by step. Slits are reinforced and gussets set by the piece, the neck clipped by the metre. */
export function stepsOf(
  f: Figures,
  { pieces, seams, hems }: Assembly,
  { buttons }: { buttons: number },
): Step[] {
  const { step, sewing: sewingAll, hemming, before, pressSeams, after } = makingOf(pieces, seams, hems)
  const sewing = (pick: (seam: Seam) => boolean) => sewingAll((s) => !inLining(s) && pick(s))
  const neckMetres = (f.neck.perimeter + 2 * f.neck.slit) / 1000
  const slits = (f.neck.slit > 0 ? 1 : 0) + (f.skirt.gores > 4 ? 2 : 0)
  const neckFaced = (s: Seam) => s.kind === 'facing' || s.kind === 'facingJoin'
  const firstSide = (s: Seam) => s.id.startsWith('gusset-sleeve-front')
  const secondSide = (s: Seam) => s.id.startsWith('gusset-sleeve-back') || s.kind === 'underarm'
  const toBody = (s: Seam) => s.kind === 'armhole' || s.id.startsWith('gusset-body')
  const together = (s: Seam) => s.kind === 'side' || s.id.startsWith('gore-to-gore')
  const goresIn = (s: Seam) => s.kind === 'gore' || s.id.startsWith('centre-line')
  const atNeck = (h: Hem) => h.kind === 'neck' || h.kind === 'slit' || h.kind === 'facingEdge'
  const neckWork = [work('clipNeck', neckMetres), ...(slits > 0 ? [work('reinforceSlit', slits)] : [])]

  return worthDoing([
    ...before,
    step(
      'shoulders',
      'sew',
      [],
      sewing((s) => s.kind === 'shoulder'),
    ),
    step('gores', 'sew', [], sewing(goresIn)),
    step('gussets', 'sew', [work('setGusset', 2)], sewing(firstSide)),
    step('sleeveSeams', 'sew', [], sewing(secondSide)),
    step('armholes', 'sew', [], sewing(toBody)),
    step('sideSeams', 'sew', [], sewing(together)),
    step('sewLining', 'sew', [], sewingAll(inLining)),
    pressSeams,
    step('tryOn', 'fit', [work('tryOn', 1)], { seams: [], hems: [] }, ['pins']),
    step('neck', 'hem', neckWork, { hems: hemming(atNeck).hems, seams: sewing(neckFaced).seams }),
    step(
      'wrists',
      'hem',
      [],
      hemming((h) => h.kind === 'wrist'),
    ),
    step('level', 'fit', [work('hangBias', 1), work('levelHem', f.skirt.sweep / 1000)]),
    step(
      'bottom',
      'hem',
      [],
      hemming((h) => h.kind === 'bottom'),
    ),
    step(
      'fellLining',
      'hem',
      [],
      hemming((h) => h.kind === 'lining'),
    ),
    step(
      'buttons',
      'finish',
      buttons > 0 ? [work('sewButton', buttons), work('workButtonhole', buttons)] : [],
    ),
    ...after,
  ])
}
