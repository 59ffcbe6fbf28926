import { useState } from 'react'
import { printDate } from '../../core/words/dates.ts'
import type { OutputOf } from '../../core/workroom.ts'
import { Account } from '../commission/account.tsx'
import { Days } from '../commission/days.tsx'
import { Deliver } from '../commission/deliver.tsx'
import { Fittings } from '../commission/fittings.tsx'
import { GarmentSteps } from '../commission/garment-steps.tsx'
import { ON_PAGE } from '../commission/invoices.tsx'
import { type Followed, useGarmentNames } from '../commission/logged.ts'
import { Money } from '../commission/money.tsx'
import { Notes } from '../commission/notes.tsx'
import { Pictures } from '../commission/pictures.tsx'
import { TimeList } from '../commission/time-list.tsx'
import { Button } from '../parts/button.tsx'
import { useLedTo } from '../parts/led-to.ts'
import { useShown } from '../parts/printing.ts'
import { Refusal } from '../parts/refusal.tsx'
import { todayHere } from '../parts/today.ts'
import { addressOf } from '../router.ts'
import { useDoing, useHouse, useQuery, useTell } from '../workroom.tsx'

/**
 * One commission: its garments with steps to tick, the time they took, and what was quoted against it.
 * @param time id of a logged time that is to be put right
 */
export function Commission({ id, time }: { id: string; time: string | undefined }) {
  const { value, refused } = useQuery('commission.get', { id })
  return value === undefined ? (
    <Refusal sentence={refused} />
  ) : (
    <Begun first={value.commission} opened={time} />
  )
}

function Begun({ first, opened }: { first: Followed; opened: string | undefined }) {
  const { workroom } = useHouse()
  const tell = useTell()
  const { id } = first
  const [commission, setCommission] = useState(first)
  const [said, setSaid] = useState('')
  const logged = useQuery('times.list', { commissionId: id })
  const accounts = useQuery('commission.account', { id })
  const money = useQuery('money.of', { commissionId: id })
  const kept = useQuery('notes.list', { commissionId: id })
  const nameOf = useGarmentNames(commission)
  const times = logged.value?.times ?? []
  // What is left is reckoned by the pace, and every logged time may teach it.
  const again = async () => {
    logged.reload()
    accounts.reload()
    follow((await workroom.ask('commission.get', { id })).commission)
  }
  // What is due follows what is cut, fitted and delivered.
  const follow = (next: Followed) => {
    setCommission(next)
    money.reload()
  }
  useLedTo(ON_PAGE)
  const open = commission.state === 'open'
  const account =
    accounts.value === undefined ? (
      <Refusal sentence={accounts.refused} />
    ) : (
      <Account commission={commission} accounts={accounts.value} times={times} onWritten={accounts.reload} />
    )
  return (
    <div className="stack">
      <Head commission={commission} money={money.value} onChanged={again} />
      <Days commission={commission} money={money.value} onChanged={follow} />
      <p role="status" className="unseen">
        {said}
      </p>
      {open ? null : (
        <section className="sheet stack">
          <h2>{tell('times.account.title')}</h2>
          {account}
        </section>
      )}
      {commission.garments.map((garment) => (
        <GarmentSteps
          key={garment.id}
          commissionId={id}
          garment={garment}
          name={nameOf(garment)}
          times={times}
          state={commission.state}
          onTicked={follow}
          onLogged={(minutes, step) => {
            setSaid(tell('times.log.done', { time: { minutes }, step }))
            void again()
          }}
        />
      ))}
      <Fittings commission={commission} onChanged={() => void again()} />
      {/* What is paid may be what it waited for. */}
      <Money commission={commission} money={{ ...money, reload: () => void again() }} />
      <Notes commissionId={id} kept={kept} />
      <Pictures commissionId={id} kept={kept} />
      <Refusal sentence={logged.refused} />
      {logged.value === undefined ? null : (
        <TimeList commission={commission} times={times} opened={opened} onChanged={() => void again()} />
      )}
      {open ? (
        <details className="sheet">
          <summary>{tell('times.account.title')}</summary>
          {account}
        </details>
      ) : null}
    </div>
  )
}

type HeadProps = {
  commission: Followed
  money: OutputOf<'money.of'> | undefined
  onChanged: () => Promise<void>
}

function Head({ commission, money, onChanged }: HeadProps) {
  const { workroom, reader } = useHouse()
  const tell = useTell()
  const doing = useDoing()
  const show = useShown()
  const { id, revision, state, deliveredDay, cancelledDay } = commission
  const [handing, setHanding] = useState(false)
  const reopen = () =>
    doing.run(async () => {
      await workroom.ask('commission.reopen', { id, revision })
      await onChanged()
    })
  const fresh =
    state === 'open' &&
    commission.day === todayHere() &&
    commission.garments.every(({ steps }) => steps.every(({ doneAt }) => doneAt === null))
  const { number, customer, garments } = commission
  const wearers = [...new Set(garments.map(({ wearer }) => wearer))]
  const title = wearers.every((wearer) => wearer === customer)
    ? tell('screen.commission.title', { number, customer })
    : tell('screen.commission.titlePaid', { number, wearer: wearers.join(', '), payer: customer })
  const facts = [
    printDate(commission.day, reader.locale),
    cancelledDay !== null
      ? tell('life.cancelled', { day: { date: cancelledDay } })
      : deliveredDay === null
        ? tell('screen.commission.leftInAll', { left: { minutes: commission.left.mean } })
        : tell('times.commission.delivered', { day: { date: deliveredDay } }),
    tell('times.commission.agreed', { money: commission.agreed }),
  ]
  return (
    <>
      <div className="between">
        <div>
          <h1>{title}</h1>
          <p className="quiet">
            {facts.join(' · ')}
            {' · '}
            <a href={addressOf('quotes', commission.quoteId)}>
              {tell('screen.commission.fromQuote', { quote: commission.quoteNumber })}
            </a>
          </p>
          {fresh ? <p role="status">{tell('life.accepted', { number: commission.number })}</p> : null}
          {commission.noted.map(({ name, note }) => (
            <p key={name} className="noted">
              {tell('paper.order.noted', { wearer: name, text: note })}
            </p>
          ))}
        </div>
        <div className="row">
          {state === 'cancelled' ? null : (
            <Button
              busy={doing.busy}
              onPress={() => void doing.run(() => show(workroom.ask('labels.print', { commissionId: id })))}
            >
              {tell('papers.labels')}
            </Button>
          )}
          {state === 'open' ? (
            <Button
              main={commission.garments.every(({ next }) => next === null)}
              busy={doing.busy}
              onPress={() => setHanding(!handing)}
            >
              {tell('times.commission.deliver')}
            </Button>
          ) : state === 'delivered' ? (
            <Button busy={doing.busy} onPress={() => void reopen()}>
              {tell('times.commission.reopen')}
            </Button>
          ) : null}
        </div>
      </div>
      <Refusal sentence={doing.refused?.message} />
      {handing && state === 'open' ? (
        <Deliver {...{ commission, money }} close={() => setHanding(false)} onDelivered={onChanged} />
      ) : null}
    </>
  )
}
