import { useEffect, useRef, useState } from 'react'
import { say } from '../../core/words/say.ts'
import { CutStage } from '../commission/cut-stage.tsx'
import { type Followed, type Garment, useGarmentNames } from '../commission/logged.ts'
import { Ticked } from '../commission/ticked.tsx'
import { useTicking } from '../commission/ticking.ts'
import { Washed } from '../commission/washed.tsx'
import { WordHelp } from '../help/help.tsx'
import { wordOfStep } from '../help/topics.ts'
import { Button } from '../parts/button.tsx'
import { Refusal } from '../parts/refusal.tsx'
import { addressOf } from '../router.ts'
import { useRunning } from '../today/running.tsx'
import { useHouse, useKept, useQuery, useTell } from '../workroom.tsx'
import { TableBar } from './bar.tsx'
import { Mark } from './mark.tsx'
import { Minded, Sewn } from './sewn.tsx'
import { type AtTable, firstOpen, type Station, stationsOf } from './stations.ts'
import { useTableKeys } from './use-table-keys.ts'

type Props = { commissionId: string; garmentId: string | undefined }

/** One garment at the cutting table: one thing at a time, large enough to be read standing and touched with chalk on the hand. */
export function Table({ commissionId, garmentId }: Props) {
  const { value, refused, reload } = useQuery('commission.get', { id: commissionId })
  const commission = value?.commission
  const garment = commission?.garments.find(({ id }) => id === garmentId) ?? commission?.garments[0]
  return (
    <main className="table">
      <Refusal sentence={refused} />
      {commission === undefined || garment === undefined ? null : (
        <OneGarment key={garment.id} {...{ commission, garment }} onTicked={reload} />
      )}
    </main>
  )
}

type GarmentProps = { commission: Followed; garment: Garment; onTicked: () => void }

function OneGarment({ commission, garment, onTicked }: GarmentProps) {
  const { value, refused, reload } = useQuery('garment.table', { garmentId: garment.id })
  if (value === undefined) return <Refusal sentence={refused} />
  // What was measured and laid anew shows in the figures that follow.
  return <Stations {...{ commission, garment, onTicked }} table={value} onLaid={reload} />
}

type StationsProps = GarmentProps & { table: AtTable; onLaid: () => void }

function Stations({ commission, garment, table, onTicked, onLaid }: StationsProps) {
  const tell = useTell()
  const nameOf = useGarmentNames(commission)
  const stations = stationsOf(garment, table.pieces)
  const begun = firstOpen(stations)
  const [kept, keep] = useKept(`table/${garment.id}`, begun)
  const [moved, setMoved] = useState(false)
  const at = stations.find(({ key }) => key === kept) ?? stations.find(({ key }) => key === begun)
  const place = at === undefined ? 0 : stations.indexOf(at)
  const go = (to: Station | undefined) =>
    to === undefined
      ? undefined
      : () => {
          if (at?.kind === 'measure') onLaid()
          setMoved(true)
          keep(to.key)
        }
  return (
    <>
      <header className="table-head">
        <a className="button" href={addressOf('commissions', commission.id)}>
          {tell('table.leave', { number: commission.number })}
        </a>
        <p className="table-name">{nameOf(garment)}</p>
        <p>{at === undefined ? null : placeOf(at, table, tell)}</p>
      </header>
      {at === undefined ? (
        <p>{tell('table.nothing')}</p>
      ) : (
        <AtStation
          key={at.key}
          {...{ commission, garment, at, table, moved, onTicked }}
          name={nameOf(garment)}
          back={go(stations[place - 1])}
          next={go(stations[place + 1])}
        />
      )}
    </>
  )
}

/** Where she stands, by the numbers of the work order: the pieces to mark belong to the cutting. */
function placeOf({ step }: Station, { steps, numbered }: AtTable, tell: ReturnType<typeof useTell>): string {
  const number = steps.find(({ id }) => id === step.id)?.number ?? null
  return number === null ? tell('paper.step.cameUp') : tell('table.place', { place: number, all: numbered })
}

type StationProps = GarmentProps & {
  at: Station
  table: AtTable
  name: string
  /** Whether she came here from another station, so that what is new is to be read out. */
  moved: boolean
  back: (() => void) | undefined
  next: (() => void) | undefined
}

function AtStation({ commission, garment, at, table, name, moved, back, next, onTicked }: StationProps) {
  const { reader } = useHouse()
  const tell = useTell()
  const heading = useRef<HTMLHeadingElement>(null)
  const ticking = useTicking(garment.id, onTicked)
  const { timer, stop } = useRunning()
  useEffect(() => {
    if (moved) heading.current?.focus()
    scrollTo(0, 0)
  }, [moved])
  const open = commission.state === 'open'
  const { step } = at
  const done = at.kind === 'step' && step.doneAt !== null
  const word = at.kind === 'measure' ? 'shrinkage' : at.kind === 'step' ? wordOfStep(step.key) : undefined
  const on = { stage: step.stage, stepId: step.id, name: say(step.name, reader) }
  const tick =
    at.kind === 'step' && open && !done && !ticking.busy
      ? () => {
          // The button goes with what it does; who pressed it by key stays here.
          heading.current?.focus()
          ticking.mark(on, true)
          // What is done takes no more time; a timer that looks forgotten asks first.
          if (timer?.stepIds.length === 1 && timer.stepIds[0] === step.id && timer.guess === null) void stop()
        }
      : undefined
  useTableKeys({ back, next, done: tick })
  const here = table.steps.find(({ id }) => id === step.id)
  const { did, guard } = ticking
  return (
    <>
      <section className="table-station" aria-labelledby="table-heading">
        {at.kind === 'mark' ? (
          <p className="table-over">{tell('table.mark.of', { place: at.place, all: at.of })}</p>
        ) : (
          <p className="table-over">{tell(`paper.stage.${step.stage}`)}</p>
        )}
        <div className="table-title">
          <h1 id="table-heading" ref={heading} tabIndex={-1}>
            {at.kind === 'mark'
              ? tell('table.mark', { piece: at.piece.piece.name })
              : at.kind === 'measure'
                ? tell('table.measure')
                : on.name}
            {done ? <span className="table-is-done"> {tell('table.isDone')}</span> : null}
          </h1>
          {word === undefined ? null : <WordHelp word={word} />}
        </div>
        {at.kind === 'mark' ? <Mark piece={at.piece} spread={table.spread} /> : null}
        {at.kind === 'measure' ? (
          <>
            <p>{tell('table.measure.why')}</p>
            <Washed garmentId={garment.id} {...{ name, open }} />
          </>
        ) : null}
        {at.kind === 'step' ? (
          <>
            <Minded cautions={here?.cautions ?? []} />
            <Sewn sewn={here?.sewn ?? []} />
            <Ticked
              refused={ticking.refused}
              busy={ticking.busy}
              anyway={guard === undefined ? undefined : ticking.anyway}
              did={did && { what: did.act.name, ...(did.undone ? {} : { undo: ticking.undo }) }}
            />
            {done && open && (did === undefined || did.undone) ? (
              <div>
                <Button busy={ticking.busy} onPress={() => ticking.mark(on, false)}>
                  {tell('table.reopen')}
                </Button>
              </div>
            ) : null}
            {done && next === undefined ? <p>{tell('table.finish')}</p> : null}
            {step.stage === 'cut' && !done ? <CutStage {...{ garment, name, open }} /> : null}
          </>
        ) : null}
      </section>
      <TableBar
        {...{ back, next, isDone: done }}
        done={at.kind === 'step' ? { act: tick } : undefined}
        stepId={open ? step.id : undefined}
        name={on.name}
      />
    </>
  )
}
