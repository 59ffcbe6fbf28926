import { useState } from 'react'
import { Button as AriaButton } from 'react-aria-components'
import { printDate } from '../../core/words/dates.ts'
import { printMinutes } from '../../core/words/time.ts'
import { Refusal } from '../parts/refusal.tsx'
import { useDoing, useHouse, useTell } from '../workroom.tsx'
import { type Followed, type Time, useStepsOf } from './logged.ts'
import { TimeForm } from './time-form.tsx'

type Props = {
  commission: Followed
  times: readonly Time[]
  /** The time that is open to be put right when the maker comes in. */
  opened: string | undefined
  onChanged: () => void
}

/** The times logged for a commission, each of which can be opened to be put right. */
export function TimeList({ commission, times, opened, onChanged }: Props) {
  const tell = useTell()
  const stepsOf = useStepsOf(commission)
  const counted = times.filter(({ removedAt }) => removedAt === null)
  const minutes = counted.reduce((sum, time) => sum + time.minutes, 0)
  return (
    <section className="sheet stack">
      <h2>{tell('times.list.title')}</h2>
      {times.length === 0 ? (
        <p className="quiet">{tell('times.list.none')}</p>
      ) : (
        <>
          <p className="quiet">{tell('times.list.about', { time: { minutes } })}</p>
          <table className="times">
            <thead>
              <tr>
                <th scope="col">{tell('times.list.day')}</th>
                <th scope="col" className="amount">
                  {tell('times.list.time')}
                </th>
                <th scope="col">{tell('times.list.steps')}</th>
                <td />
              </tr>
            </thead>
            <tbody>
              {times.map((time) => (
                <Entry
                  key={time.id}
                  time={time}
                  steps={stepsOf(time)}
                  opened={time.id === opened}
                  onChanged={onChanged}
                />
              ))}
            </tbody>
          </table>
        </>
      )}
    </section>
  )
}

type EntryProps = { time: Time; steps: string; opened: boolean; onChanged: () => void }

function Entry({ time, steps, opened, onChanged }: EntryProps) {
  const { workroom, reader } = useHouse()
  const tell = useTell()
  const doing = useDoing()
  const [open, setOpen] = useState(opened)
  const { id, revision, asideAt, note } = time
  /** The revision that was written over: until what is written is here, it cannot be put right. */
  const [over, setOver] = useState<number>()
  const written = () => {
    setOver(revision)
    onChanged()
  }
  const removed = time.removedAt !== null
  const day = printDate(time.day, reader.locale)
  const putBack = () =>
    doing.run(() => workroom.ask('time.putBack', { id, revision })).then((done) => done && written())
  if (open && !removed) {
    return (
      <tr>
        <td colSpan={4}>
          <TimeForm time={time} steps={steps} onChanged={written} onClose={() => setOpen(false)} />
        </td>
      </tr>
    )
  }
  const doWhat = tell(removed ? 'times.list.putBack' : 'times.list.change')
  return (
    <tr className={removed ? 'removed' : ''}>
      <td className="figure">{day}</td>
      <td className="amount">{printMinutes(time.minutes)}</td>
      <td>
        <span className="times-steps">{steps}</span>
        {removed || asideAt !== null ? (
          <em className="quiet"> ({tell(removed ? 'times.list.removed' : 'times.list.aside')})</em>
        ) : null}
        {note === '' ? null : <p className="quiet">{note}</p>}
        <Refusal sentence={doing.refused?.message} />
      </td>
      <td className="times-change">
        <AriaButton
          className="log-time"
          isDisabled={doing.busy || over === revision}
          aria-label={tell('times.list.doing', {
            ...{ doing: doWhat, time: printMinutes(time.minutes), day, steps },
          })}
          onPress={() => (removed ? void putBack() : setOpen(true))}
        >
          {doWhat}
        </AriaButton>
      </td>
    </tr>
  )
}
