import { printLength } from '../../core/words/length.ts'
import { ActForm, Acts } from '../parts/acts.tsx'
import { Button } from '../parts/button.tsx'
import { Refusal } from '../parts/refusal.tsx'
import { useTyped } from '../parts/typed.ts'
import { useDoing, useHouse, useTell } from '../workroom.tsx'
import { ClothFields, clothChanged, clothTexts } from './cloth-fields.tsx'
import type { Cloth } from './lengths.tsx'
import { TestSquare } from './test-square.tsx'

type Props = { cloth: Cloth; onChanged: () => void }

/** A cloth of the book: what it is, from whom it comes, and what one does with it. */
export function ClothEntry({ cloth, onChanged }: Props) {
  const { workroom, reader } = useHouse()
  const tell = useTell()
  const { name, charged, supplier, leadDays, priceMinor, currency } = cloth
  const facts = [
    tell('screen.cloth.line', {
      width: { mm: cloth.width },
      warp: cloth.warpShrinkage * 100,
      weft: cloth.weftShrinkage * 100,
      step: printLength(cloth.increment, reader.unit, reader.locale),
    }),
    ...(charged === 'used' ? [tell('screen.cloth.charged.used')] : []),
    ...(supplier === '' ? [] : [tell('cloth.from', { supplier, days: leadDays })]),
  ]
  const label = (words: string) => tell('life.doing', { doing: words, what: name })
  const acts = [
    {
      ...{ id: 'change', words: tell('cloth.change') },
      label: label(tell('cloth.change')),
      form: (close: () => void) => <Change {...{ cloth, close }} onDone={onChanged} />,
    },
    {
      ...{ id: 'square', words: tell('cloth.square') },
      label: label(tell('cloth.square')),
      form: (close: () => void) => <TestSquare {...{ cloth, close }} onKept={onChanged} />,
    },
    {
      ...{ id: 'takeBack', words: tell('cloth.takeBack') },
      label: label(tell('cloth.takeBack')),
      form: (close: () => void) => (
        <ActForm
          label={label(tell('cloth.takeBack'))}
          keep={tell('cloth.takeBack')}
          work={() => workroom.ask('cloth.takeBack', { id: cloth.id, revision: cloth.revision })}
          then={onChanged}
          {...{ close }}
        >
          <p>{tell('cloth.takeBack.about')}</p>
        </ActForm>
      ),
    },
  ]
  return (
    <li>
      <div className="entry">
        <strong>{name}</strong>
        <span className="quiet">{facts.join(' · ')}</span>
        <span className="amount">
          {tell('screen.cloth.perMetre', { price: { minor: priceMinor, currency } })}
        </span>
      </div>
      <Acts plain acts={acts} />
    </li>
  )
}

type ChangeProps = { cloth: Cloth; close: () => void; onDone: () => void }

function Change({ cloth, close, onDone }: ChangeProps) {
  const { workroom, reader } = useHouse()
  const tell = useTell()
  const doing = useDoing()
  const { typed, field, forget } = useTyped(clothTexts(cloth, reader))
  const { id, revision, name } = cloth
  const change = async () => {
    const work = () =>
      workroom.ask('cloth.change', { id, revision, cloth: clothChanged(cloth, typed, reader) })
    if (!(await doing.run(work))) return
    forget()
    close()
    onDone()
  }
  return (
    <form
      className="stack"
      aria-label={tell('life.doing', { doing: tell('cloth.change'), what: name })}
      onSubmit={(event) => {
        event.preventDefault()
        void change()
      }}
    >
      <ClothFields {...{ field }} refused={doing.refused} />
      <p className="quiet">{tell('cloth.change.quoted')}</p>
      <Refusal sentence={doing.refused?.message} />
      <div className="row">
        <Button main type="submit" busy={doing.busy}>
          {tell('cloth.change.keep')}
        </Button>
        <Button onPress={close}>{tell('times.list.leave')}</Button>
      </div>
    </form>
  )
}
