import { useMemo } from 'react'
import type { Drawing } from '../../core/draw/drawing.ts'
import { svgOf } from '../../core/draw/svg.ts'

/** A drawing as paper prints it. The markup is the drawing room's own, with every letter of it escaped there. */
export function SheetDrawing({ drawing }: { drawing: Drawing }) {
  const markup = useMemo(() => ({ __html: svgOf(drawing) }), [drawing])
  // biome-ignore lint/security/noDangerouslySetInnerHtml: markup made by svgOf alone, which escapes all text
  return <div dangerouslySetInnerHTML={markup} />
}
