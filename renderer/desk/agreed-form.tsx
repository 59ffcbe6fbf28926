import { memo } from 'react'
import type { OutputOf } from '../../core/workroom.ts'
import { SelectField, TextField } from '../parts/field.tsx'
import { useQuery, useTell } from '../workroom.tsx'
import type { Agreed } from './agreed.ts'
import type { Estimate } from './use-estimate.ts'

type Props = {
  agreed: Agreed
  onChange: (agreed: Agreed) => void
  estimate: Estimate | undefined
  /** The field that is wrong, and the sentence that says so. */
  wrong: { field: string; sentence: string } | undefined
}

/** Where each field stands in what the workroom is asked. */
const AT = { rush: 'price.rush', discount: 'price.discount', tax: 'price.tax', brought: 'brought' } as const

/** What is agreed besides the garment: haste, a part taken off, the customer's own cloth, another thread, another tax. */
export const AgreedForm = memo(({ agreed, onChange, estimate, wrong }: Props) => {
  const tell = useTell()
  const { value: house } = useQuery('settings.get', {})
  const brought = estimate?.brought
  const field = (id: keyof typeof AT, help?: string) => (
    <TextField
      label={tell(`selling.${id}`)}
      value={agreed[id]}
      onChange={(text) => onChange({ ...agreed, [id]: text })}
      help={help}
      wrong={wrong?.field === AT[id] ? wrong.sentence : undefined}
    />
  )
  return (
    <details>
      <summary>{tell('selling.agreed')}</summary>
      <div className="stack">
        {field('rush')}
        {field('discount')}
        {field('brought', tell('selling.brought.help'))}
        {brought === undefined || agreed.brought === '' ? null : (
          <p className={brought.enough ? 'help' : 'wrong'}>
            {tell(`selling.brought.${brought.enough ? 'enough' : 'short'}`, {
              needed: { mm: Math.ceil(brought.needed) },
              length: { mm: brought.length },
            })}
          </p>
        )}
        {house === undefined
          ? null
          : (['hand', 'machine'] as const).map((work) => (
              <ThreadField
                key={work}
                work={work}
                settings={house.settings}
                value={agreed[work]}
                onChange={(id) => onChange({ ...agreed, [work]: id })}
              />
            ))}
        {field('tax', tell('selling.tax.help'))}
      </div>
    </details>
  )
})

type ThreadProps = {
  work: 'hand' | 'machine'
  settings: OutputOf<'settings.get'>['settings']
  value: string
  onChange: (id: string) => void
}

/** A choice of thread, where the drawer holds more than the usual one. */
function ThreadField({ work, settings, value, onChange }: ThreadProps) {
  const tell = useTell()
  const others = settings.otherThreads.filter((one) => one.work === work)
  if (others.length === 0) return null
  const usual = { id: '', name: tell('selling.thread.usual', { thread: settings.threadStock[work].name }) }
  return (
    <SelectField
      label={tell(`selling.thread.${work}`)}
      value={value}
      onChange={onChange}
      options={[usual, ...others]}
    />
  )
}
