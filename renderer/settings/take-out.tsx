import { useState } from 'react'
import { numberFormat } from '../../core/words/formats.ts'
import type { InputOf } from '../../core/workroom.ts'
import { Button } from '../parts/button.tsx'
import { SelectField } from '../parts/field.tsx'
import { Refusal } from '../parts/refusal.tsx'
import { saved } from '../parts/saved.ts'
import { useDoing, useHouse, useTell } from '../workroom.tsx'

type List = InputOf<'lists.csv'>['list']
const LISTS: readonly List[] = [
  ...(['clients', 'measures', 'cloths', 'lengths', 'remnants', 'supplies'] as const),
  ...(['quotes', 'commissions', 'steps', 'times', 'payments', 'invoices'] as const),
]

/** The workroom to take along: everything as one file, or one list as a table. */
export function TakeOut() {
  const { workroom, reader } = useHouse()
  const tell = useTell()
  const doing = useDoing()
  const [said, setSaid] = useState<string[]>([])
  const [list, setList] = useState<List>('clients')
  const takeAll = () =>
    doing.run(async () => {
      setSaid([])
      const { file, missing } = await workroom.ask('store.export', {}, ({ done }) =>
        setSaid([tell('take.progress', { percent: Math.round(100 * done) })]),
      )
      const size = numberFormat(reader.locale, { maximumFractionDigits: 1 }).format(file.bytes / 1e6)
      setSaid([
        tell('take.done', { path: file.path, size }),
        ...(missing > 0 ? [tell('take.missing', { count: missing })] : []),
      ])
      const shown = await workroom.bridge.paper(file.id)
      if (!shown.ok) throw new Error(shown.error.message)
    })
  const saveList = () =>
    doing.run(async () => {
      const { name, csv } = await workroom.ask('lists.csv', { list })
      saved(name, csv, 'text/csv;charset=utf-8')
    })
  return (
    <section className="sheet stack">
      <h2>{tell('take.title')}</h2>
      <p>{tell('take.about')}</p>
      <p className="quiet">{tell('take.private')}</p>
      <div>
        <Button busy={doing.busy} onPress={() => void takeAll()}>
          {tell('take.all')}
        </Button>
      </div>
      <div role="status">
        {said.map((one) => (
          <p key={one}>{one}</p>
        ))}
      </div>
      <h3>{tell('take.list')}</h3>
      <p className="quiet">{tell('take.list.about')}</p>
      <div className="row beside-field">
        <SelectField
          label={tell('take.list.which')}
          value={list}
          onChange={(id) => setList(id as List)}
          options={LISTS.map((id) => ({ id, name: tell(`lists.name.${id}`) }))}
        />
        <Button busy={doing.busy} onPress={() => void saveList()}>
          {tell('take.list.save')}
        </Button>
      </div>
      <Refusal sentence={doing.refused?.message} />
    </section>
  )
}
