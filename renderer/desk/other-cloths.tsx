import { memo } from 'react'
import { SelectField } from '../parts/field.tsx'
import { useTell } from '../workroom.tsx'
import type { Estimate } from './use-estimate.ts'

const OTHER_ROLES = ['lining', 'interlining', 'facing'] as const
type OtherRole = (typeof OTHER_ROLES)[number]
/** Ids of cloths by what is cut from them. */
export type OtherCloths = Partial<Record<OtherRole, string>>

type Props = {
  estimate: Estimate | undefined
  cloths: readonly { id: string; name: string }[]
  chosen: OtherCloths
  onChange: (chosen: OtherCloths) => void
}

/** A cloth for the lining, interlining and facings of a garment that has them: its own, or another. */
export const OtherClothFields = memo(({ estimate, cloths, chosen, onChange }: Props) => {
  const tell = useTell()
  const there = (role: OtherRole) => estimate?.draft.pieces.some(({ cloth }) => cloth === role) === true
  return OTHER_ROLES.filter(there).map((role) => (
    <SelectField
      key={role}
      label={tell(`screen.desk.cloth.${role}`)}
      value={chosen[role] ?? ''}
      onChange={(id) => {
        const { [role]: _, ...rest } = chosen
        onChange(id === '' ? rest : { ...rest, [role]: id })
      }}
      options={[{ id: '', name: tell('screen.desk.cloth.same') }, ...cloths]}
    />
  ))
})
