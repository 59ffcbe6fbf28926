import { useState } from 'react'
import { ActForm, Acts } from '../parts/acts.tsx'
import { TextField } from '../parts/field.tsx'
import { Refusal } from '../parts/refusal.tsx'
import { useTyped } from '../parts/typed.ts'
import { useHouse, useQuery, useTell } from '../workroom.tsx'

type Props = { garmentId: string; name: string; open: boolean }

/** The cloth measured after the wash, so that the garment is laid on what is really there. */
export function Washed({ garmentId, name, open }: Props) {
  const tell = useTell()
  const { value, refused, reload } = useQuery('garment.measured', { garmentId })
  const [spare, setSpare] = useState<number>()
  if (value === undefined) return <Refusal sentence={refused} />
  const { measured } = value
  const words = tell(measured === null ? 'life.wash.title' : 'life.wash.again')
  return (
    <div className="shelf">
      {measured === null ? null : (
        <p role="status">
          {tell('life.wash.measured', {
            ...{ width: { mm: measured.width }, length: { mm: measured.length } },
            lay: { mm: measured.layLength },
          })}
          {spare === undefined ? '' : ` ${tell('life.wash.spare', { spare: { mm: spare } })}`}
        </p>
      )}
      {open ? (
        <Acts
          acts={[
            {
              ...{ id: 'wash', words, label: tell('life.doing', { doing: words, what: name }) },
              form: (close) => (
                <Measure
                  {...{ garmentId, name, close }}
                  onLaid={(left) => {
                    setSpare(left)
                    reload()
                  }}
                />
              ),
            },
          ]}
        />
      ) : null}
    </div>
  )
}

function Measure({
  garmentId,
  name,
  close,
  onLaid,
}: {
  garmentId: string
  name: string
  close: () => void
  onLaid: (spare: number) => void
}) {
  const { workroom } = useHouse()
  const tell = useTell()
  const { typed, field } = useTyped({ width: '', length: '' })
  return (
    <ActForm
      label={tell('life.doing', { doing: tell('life.wash.title'), what: name })}
      final="garment.washed"
      keep={tell('life.wash.keep')}
      close={close}
      work={async () => onLaid((await workroom.ask('garment.washed', { garmentId, ...typed })).laid.spare)}
    >
      <div className="pair">
        <TextField label={tell('life.wash.width')} required {...field('width')} />
        <TextField label={tell('life.wash.length')} required {...field('length')} />
      </div>
      <p className="quiet">{tell('life.wash.shelf')}</p>
    </ActForm>
  )
}
