import { useState } from 'react'
import { say } from '../../core/words/say.ts'
import { printMinutes } from '../../core/words/time.ts'
import { Button } from '../parts/button.tsx'
import { Refusal } from '../parts/refusal.tsx'
import { addressOf } from '../router.ts'
import { useDoing, useHouse, useTell } from '../workroom.tsx'
import type { Doubtful } from './figures.ts'

/** How many steps of a doubtful time are named; the rest are counted. */
const NAMED = 3

type LeftOut = { minutes: number; times: { id: string; revision: number }[] }

/** Times that look wrong: what was logged, what was expected, and what can be done about it. */
export function Doubts({ doubtful, onChanged }: { doubtful: readonly Doubtful[]; onChanged: () => void }) {
  const { workroom } = useHouse()
  const tell = useTell()
  const doing = useDoing()
  const [leftOut, setLeftOut] = useState<LeftOut>()
  const leaveOut = ({ times, minutes }: Doubtful) =>
    doing
      .run(async () => {
        const aside: LeftOut['times'] = []
        for (const { id, revision } of times)
          aside.push((await workroom.ask('time.setAside', { id, revision })).time)
        setLeftOut({ minutes, times: aside })
      })
      .then(onChanged)
  const takeUp = ({ times }: LeftOut) =>
    doing
      .run(async () => {
        for (const { id, revision } of times) await workroom.ask('time.takeUp', { id, revision })
        setLeftOut(undefined)
      })
      .then(onChanged)
  return (
    <>
      <Refusal sentence={doing.refused?.message} />
      <div role="status">
        {leftOut === undefined ? null : (
          <div className="sheet between">
            <p>{tell('times.doubt.leftOut', { minutes: { minutes: leftOut.minutes } })}</p>
            <Button busy={doing.busy} onPress={() => void takeUp(leftOut)}>
              {tell('times.doubt.takeUp')}
            </Button>
          </div>
        )}
      </div>
      {doubtful.length === 0 ? null : (
        <section className="sheet stack">
          <h2>{tell('times.doubt.title')}</h2>
          <p className="quiet">{tell('times.doubt.about')}</p>
          <ul className="entries doubts">
            {doubtful.map((one) => (
              <Doubt
                key={one.times.map(({ id }) => id).join(' ')}
                one={one}
                busy={doing.busy}
                onLeaveOut={() => void leaveOut(one)}
              />
            ))}
          </ul>
        </section>
      )}
    </>
  )
}

function Doubt({ one, busy, onLeaveOut }: { one: Doubtful; busy: boolean; onLeaveOut: () => void }) {
  const { reader } = useHouse()
  const tell = useTell()
  const { times, minutes, expected, commission, commissionId } = one
  const names = one.steps.map((name) => say(name, reader))
  const few = names.slice(0, NAMED).join(', ')
  const steps =
    names.length > NAMED ? tell('times.steps.more', { steps: few, count: names.length - NAMED }) : few
  const day = times
    .map((time) => time.day)
    .sort()
    .at(-1)!
  const about =
    expected < 1
      ? tell('times.doubt.expectedLess')
      : tell('times.doubt.expected', { time: { minutes: expected } })
  const told = tell(times.length === 1 ? 'times.doubt.one' : 'times.doubt.several', {
    ...{ logged: { minutes }, expected: about, day: { date: day }, count: times.length },
  })
  const notes = times.map(({ note }) => note).filter((note) => note !== '')
  return (
    <li className="in-doubt">
      <div>
        <p>
          <strong>{told}</strong>
        </p>
        <p>
          {tell('times.doubt.steps', { steps })}{' '}
          <a href={addressOf('commissions', commissionId)}>{commission}</a>
        </p>
        {notes.length === 0 ? null : <p className="quiet">{notes.join('; ')}</p>}
      </div>
      <div className="row">
        <Button
          busy={busy}
          onPress={onLeaveOut}
          label={`${tell('times.doubt.leaveOut')}: ${printMinutes(minutes)}, ${few}`}
        >
          {tell('times.doubt.leaveOut')}
        </Button>
        <a className="button" href={addressOf('commissions', commissionId, { time: times.at(-1)!.id })}>
          {tell('times.doubt.change', { number: commission })}
        </a>
      </div>
    </li>
  )
}
