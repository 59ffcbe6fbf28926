import type { Garment } from './logged.ts'
import { Pieces } from './pieces.tsx'
import { Promised } from './promised.tsx'
import { Washed } from './washed.tsx'

/** What stands at the stage of cutting besides its steps. Once the garment is cut, only what was cut from remains. */
export function CutStage({ garment, name, open }: { garment: Garment; name: string; open: boolean }) {
  const { id: garmentId, cut } = garment
  return (
    <>
      <Promised key={`${cut}/${open}`} {...{ garmentId, name, open, cut }} />
      {cut ? null : (
        <>
          <Washed {...{ garmentId, name, open }} />
          <Pieces {...{ garmentId, name, open }} />
        </>
      )}
    </>
  )
}
