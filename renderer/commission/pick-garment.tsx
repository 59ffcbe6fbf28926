import { type ReactNode, useState } from 'react'
import type { OutputOf } from '../../core/workroom.ts'
import { SelectField } from '../parts/field.tsx'
import { Refusal } from '../parts/refusal.tsx'
import { useQuery, useTell } from '../workroom.tsx'
import { type Followed, type Garment, useGarmentNames } from './logged.ts'

/** A garment as it is to be made now. */
export type Made = OutputOf<'garment.made'>['made']

type Props = {
  commission: Followed
  garments: readonly Garment[]
  children: (picked: { garmentId: string; made: Made }) => ReactNode
}

/** Which of several garments something is about, and how that one is to be made now. */
export function PickGarment({ commission, garments, children }: Props) {
  const tell = useTell()
  const nameOf = useGarmentNames(commission)
  const [garmentId, setGarment] = useState(garments[0]!.id)
  const { value, refused } = useQuery('garment.made', { garmentId })
  return (
    <div className="stack">
      {garments.length === 1 ? null : (
        <SelectField
          label={tell('redraft.garment')}
          value={garmentId}
          onChange={setGarment}
          options={garments.map((garment) => ({ id: garment.id, name: nameOf(garment) }))}
        />
      )}
      <Refusal sentence={refused} />
      {value === undefined ? null : children({ garmentId, made: value.made })}
    </div>
  )
}
