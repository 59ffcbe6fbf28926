import type { ReactNode } from 'react'
import { idOf, type Sheet } from './place.ts'

/** A place on the page of the settings that can be led to. */
export function At({ sheet, children }: { sheet: Sheet; children: ReactNode }) {
  return (
    <div id={idOf(sheet)} tabIndex={-1} className="led-to">
      {children}
    </div>
  )
}
