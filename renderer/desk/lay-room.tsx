import { memo, useMemo, useState } from 'react'
import { chalkWriting } from '../../core/draw/chalk.ts'
import { takenWidth } from '../../core/draw/laid.ts'
import { drawLay } from '../../core/draw/lay.ts'
import { shorterForAStep } from '../../core/lay/purchase.ts'
import { printLength, roundedUp } from '../../core/words/length.ts'
import { priceOfLength } from '../../core/words/money.ts'
import { say } from '../../core/words/say.ts'
import type { InputOf, OutputOf } from '../../core/workroom.ts'
import { Button } from '../parts/button.tsx'
import { SelectField } from '../parts/field.tsx'
import { Refusal } from '../parts/refusal.tsx'
import { SheetDrawing } from '../parts/sheet-drawing.tsx'
import { useHouse, useTell } from '../workroom.tsx'
import { Flaws } from './flaws.tsx'
import { HandLay } from './hand-lay.tsx'
import { OtherCloths, WaysOfLaying } from './lay-trials.tsx'
import { LaySizes } from './sizes.tsx'
import type { Estimate } from './use-estimate.ts'
import type { LayTable, Manner } from './use-lay.ts'

/** The lay is drawn about this long at first, mm; each step larger or smaller changes it by a half. */
const LAY_LENGTH = 205
const STEP = 1.5
/** So much of its length a search or a hand may still win, in parts of one (common practice). */
const WITHIN_REACH = 0.05
/** A step is worth a word where so small a part of it is lacking, in parts of one. */
const WORTH_IT = 0.25
const MANNERS: Manner[] = ['single', 'doubled', 'torn']

/** A garment as a search for its lay wants to know it. */
export type Asked = Omit<InputOf<'lay.best'>, 'lay' | 'seconds' | 'seed'>
type Cloth = OutputOf<'cloths.list'>['cloths'][number]
type Props = { estimate: Estimate; table: LayTable; asked: Asked; cloth: Cloth | undefined }

/** The cloth on the table: how it lies, the lay to scale, a search for a shorter one, and the maker's own hand. */
export function LayRoom({ estimate, table, asked, cloth }: Props) {
  const tell = useTell()
  const { reader } = useHouse()
  const [byHand, setByHand] = useState(false)
  const { running, found, manner, doing } = table
  const lay = running?.best ?? estimate.lay
  const saved = found === undefined ? 0 : found.firstLength - found.lay.length
  const flat = manner === 'single'
  return (
    <section className="stack">
      <h2>{tell('screen.desk.lay')}</h2>
      <div className="lay-tools">
        <SelectField
          label={tell('screen.lay.manner')}
          value={manner}
          onChange={(id) => table.setManner(id as Manner)}
          options={MANNERS.map((id) => ({ id, name: tell(`screen.lay.manner.${id}`) }))}
        />
        {running === undefined ? (
          <Button onPress={table.search} busy={doing.busy}>
            {tell('screen.lay.search')}
          </Button>
        ) : (
          <Button onPress={table.stop}>{tell('screen.lay.stop')}</Button>
        )}
        {table.wish.placements === undefined || running !== undefined ? null : (
          <Button onPress={table.clear}>{tell('screen.lay.back')}</Button>
        )}
        {flat && running === undefined ? (
          <Button onPress={() => setByHand(!byHand)} pressed={byHand}>
            {tell('screen.lay.byHand')}
          </Button>
        ) : null}
      </div>
      <Refusal sentence={doing.refused?.message} />
      {running === undefined ? null : (
        <p className="lay-progress">
          <progress aria-label={tell('screen.lay.progress')} max={1} value={running.done} />
          <span>{tell('screen.lay.running', { length: { mm: lay.length } })}</span>
        </p>
      )}
      {byHand && flat && running === undefined ? (
        <HandLay estimate={estimate} table={table} asked={asked} />
      ) : (
        <LayDrawing lay={lay} draft={estimate.draft} />
      )}
      <p className="quiet">
        {tell('screen.desk.layUsed', {
          ...{ length: { mm: lay.length }, width: { mm: lay.usableWidth } },
          percent: Math.round(lay.used * 100),
        })}{' '}
        {found === undefined || running !== undefined
          ? null
          : saved > 1
            ? tell('screen.lay.shorter', { saved: printLength(saved, reader.unit, reader.locale) })
            : tell('screen.lay.noShorter')}
      </p>
      {running !== undefined || cloth === undefined ? null : <StepLess {...{ estimate, cloth }} />}
      {found?.note === undefined ? null : <p className="refusal">{say(found.note, reader)}</p>}
      <Flaws table={table} />
      <WaysOfLaying asked={asked} />
      <OtherCloths asked={asked} manner={manner} />
    </section>
  )
}

/** Where a lay only a little shorter would spare a step of the shop: so much, and what it would save. */
function StepLess({ estimate: { lay, purchase, brought }, cloth }: { estimate: Estimate; cloth: Cloth }) {
  const { reader } = useHouse()
  const tell = useTell()
  const { increment, priceMinor, currency } = cloth
  const less = shorterForAStep(purchase, increment)
  // Cloth that the client brings is not bought, and of what is paid only as far as it is used no step is.
  if (brought !== undefined || cloth.charged !== 'bought' || less <= 0) return null
  if (less > Math.min(WITHIN_REACH * lay.length, WORTH_IT * increment)) return null
  return (
    <p>
      {tell('lay.stepLess', {
        less: { mm: roundedUp(less, reader.unit) },
        step: { mm: increment },
        saved: priceOfLength({ minor: priceMinor, currency }, increment),
      })}
    </p>
  )
}

const LayDrawing = memo(({ lay, draft }: { lay: Estimate['lay']; draft: Estimate['draft'] }) => {
  const { reader } = useHouse()
  const tell = useTell()
  const [size, setSize] = useState(1)
  const drawing = useMemo(
    () => drawLay({ lay, pieces: draft.pieces }, reader, (size * LAY_LENGTH) / Math.max(1, lay.length)),
    [lay, draft, reader, size],
  )
  const taken = takenWidth(lay, draft.pieces)
  const shown = size === 1 ? 'drawn long' : 'drawn long zoomed'
  return (
    <>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a lay longer than the window is scrolled by keyboard too */}
      <section className={shown} aria-label={tell('screen.desk.lay')} tabIndex={0}>
        <SheetDrawing drawing={drawing} />
      </section>
      <p className="quiet">{tell('guiding.lay.figures', { unit: chalkWriting(reader).unit })}</p>
      {taken === undefined ? null : (
        <p>{tell('lay.tight', { taken: { mm: roundedUp(taken, reader.unit) } })}</p>
      )}
      <div className="lay-tools">
        <Button onPress={() => setSize(Math.min(8, size * STEP))}>{tell('screen.lay.larger')}</Button>
        <Button onPress={() => setSize(Math.max(1, size / STEP))} busy={size <= 1}>
          {tell('screen.lay.smaller')}
        </Button>
      </div>
      <LaySizes lay={lay} draft={draft} />
    </>
  )
})
