import { addressOf } from '../router.ts'
import { useTell } from '../workroom.tsx'

type Props = { commissionId: string; garmentId: string; name: string }

/** The way to the cutting table with one garment. */
export function ToTable({ commissionId, garmentId, name }: Props) {
  const tell = useTell()
  return (
    <a
      className="button"
      href={addressOf('table', commissionId, { garment: garmentId })}
      aria-label={tell('table.open', { garment: name })}
    >
      {tell('table.title')}
    </a>
  )
}
