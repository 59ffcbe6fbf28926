import { useState } from 'react'
import { printDate } from '../../core/words/dates.ts'
import { printMoney, sumMoney } from '../../core/words/money.ts'
import { say } from '../../core/words/say.ts'
import type { OutputOf } from '../../core/workroom.ts'
import { Button } from '../parts/button.tsx'
import { LookAt } from '../parts/look-at.tsx'
import { Refusal } from '../parts/refusal.tsx'
import { WhatIf } from '../plan/what-if.tsx'
import { goTo } from '../router.ts'
import { settingAt } from '../settings/place.ts'
import { NotUndone } from '../undo/not-undone.tsx'
import { useDoing, useHouse, useQuery, useTell } from '../workroom.tsx'
import { ForHerAlone } from './quote-alone.tsx'

type Snapshot = OutputOf<'quote.get'>['quote']['snapshot']
type Line = Snapshot['lines'][number]
/** By id of a line, the number of the option that the client takes. */
type Taken = Record<string, number>

/** One quote as it was made, to print, and to take as accepted, with the options the client picks, or declined. */
export function Quote({ id }: { id: string }) {
  const { workroom, reader } = useHouse()
  const tell = useTell()
  const { value, refused, reload } = useQuery('quote.get', { id })
  const [taken, setTaken] = useState<Taken>({})
  const doing = useDoing()
  if (value === undefined) return <Refusal sentence={refused} />
  const { quote, printed } = value
  const { snapshot } = quote
  const print = () =>
    doing.run(async () => {
      const { document } = await workroom.ask('quote.print', { id })
      const shown = await workroom.bridge.paper(document.id)
      if (!shown.ok) throw new Error(shown.error.message)
      reload()
    })
  const accept = () =>
    doing.run(async () => {
      const { commission } = await workroom.ask('quote.accept', { id, taken })
      goTo('commissions', commission.id)
    })
  const decline = () => doing.run(() => workroom.ask('quote.decline', { id })).then(reload)
  return (
    <div className="stack">
      <div className="between">
        <div>
          <h1>{tell('screen.quote.title', { number: quote.number, customer: snapshot.customer.name })}</h1>
          <p className="quiet">
            {printDate(snapshot.day, reader.locale)} · {tell(`quote.state.${quote.state}`)}
            {snapshot.supersedes === undefined
              ? ''
              : ` · ${tell('paper.quote.supersedes')} ${snapshot.supersedes}`}
            {snapshot.promised === undefined
              ? ''
              : ` · ${tell('paper.quote.promised')} ${printDate(snapshot.promised, reader.locale)}${
                  snapshot.answerBy === undefined
                    ? ''
                    : `, ${tell('screen.quote.answerBy', { day: { date: snapshot.answerBy } })}`
                }`}
            {printed === null ? '' : ` · ${tell('guiding.printed', { day: { date: printed } })}`}
          </p>
        </div>
        <Button main busy={doing.busy} onPress={() => void print()} shortcut="print">
          {tell('screen.quote.print')}
        </Button>
      </div>
      <Refusal sentence={doing.refused?.message} />
      {snapshot.letterhead.address.length > 0 ? null : (
        <p className="quiet">
          {tell('guiding.address.quoted')} <a href={settingAt('address')}>{tell('guiding.address.next')}</a>
        </p>
      )}
      <LookAt asked={{ paper: 'quote', id }} words={tell('papers.look')} />
      <div className="quote-page">
        <div className="stack">
          {snapshot.lines.map((line) => (
            <QuotedGarment
              key={line.id}
              line={line}
              taken={taken[line.id]}
              onTake={
                quote.state === 'sent' ? (option) => setTaken(withOption(taken, line.id, option)) : undefined
              }
            />
          ))}
          {snapshot.shipping === undefined ? null : (
            <p className="between">
              <span>{tell('selling.shippingLine')}</span>
              <span>{printMoney(snapshot.shipping.net, reader.locale)}</span>
            </p>
          )}
          <p className="between">
            <span>
              {tell('screen.quote.deposit', {
                deposit: snapshot.deposit,
                day: { date: snapshot.validUntil },
              })}{' '}
              <a href={settingAt('deposit')}>{tell('guiding.deposit')}</a>
            </span>
            <strong>{printMoney(totalWith(snapshot, taken), reader.locale)}</strong>
          </p>
          {(snapshot.payments ?? []).length < 3 ? null : (
            <ul className="plain">
              {snapshot.payments?.map(({ when, amount }) => (
                <li key={when}>
                  {tell('selling.payments', { amount, when: tell(`quote.payment.${when}`) })}
                </li>
              ))}
            </ul>
          )}
        </div>
        <div className="stack">
          {quote.state !== 'sent' ? null : (
            <section className="sheet stack">
              <h2>{tell('guiding.answer')}</h2>
              <WhatIf quoteId={id} promised={snapshot.promised} />
              <div className="row">
                <Button busy={doing.busy} onPress={() => void accept()}>
                  {tell('screen.quote.accept')}
                </Button>
                <Button busy={doing.busy} onPress={() => void decline()}>
                  {tell('screen.quote.decline')}
                </Button>
              </div>
              <NotUndone act="quote.accept" />
            </section>
          )}
          <ForHerAlone {...snapshot} />
        </div>
      </div>
    </div>
  )
}

function withOption(taken: Taken, id: string, option: number | undefined): Taken {
  const { [id]: _, ...rest } = taken
  return option === undefined ? rest : { ...rest, [id]: option }
}

/** What the quote comes to with what is picked. */
const totalWith = ({ lines, shipping, total }: Snapshot, taken: Taken) =>
  sumMoney(
    [
      ...lines.map((line) => line.options?.[taken[line.id] ?? -1]?.total ?? line.total),
      ...(shipping === undefined ? [] : [shipping.total]),
    ],
    total.currency,
  )

type GarmentProps = {
  line: Line
  taken: number | undefined
  /** Where the client may still pick. */
  onTake: ((option: number | undefined) => void) | undefined
}

/** One garment of a quote, and the ways of making it that the client may pick from. */
function QuotedGarment({ line, taken, onTake }: GarmentProps) {
  const { reader } = useHouse()
  const tell = useTell()
  const { options = [] } = line
  const nameOf = (option: (typeof options)[number]) =>
    option.name.map((phrase) => say(phrase, reader)).join(', ')
  const ways = [
    { key: 'stands', name: tell('selling.option.stands'), option: undefined, total: line.total },
    ...options.map((option, i) => ({
      ...{ key: nameOf(option), name: nameOf(option), option: i, total: option.total },
    })),
  ]
  return (
    <section className="sheet stack">
      <div className="between">
        <h2>{tell('paper.garment.forWhom', { title: say(line.title, reader), wearer: line.wearer.name })}</h2>
        <span className="amount">
          {line.quantity === 1 ? '' : `${line.quantity} × `}
          {printMoney(line.estimate.price.net, reader.locale)}
        </span>
      </div>
      <p>{line.description.map((sentence) => say(sentence, reader)).join(' ')}</p>
      {options.length === 0 ? null : (
        <fieldset className="picks">
          <legend>{tell('selling.option.choose')}</legend>
          {ways.map(({ key, name, option, total }) => (
            <label key={key}>
              <input
                type="radio"
                name={line.id}
                checked={taken === option}
                disabled={onTake === undefined}
                onChange={() => onTake?.(option)}
              />
              <span>{name}</span>
              <span className="amount">{printMoney(total, reader.locale)}</span>
            </label>
          ))}
        </fieldset>
      )}
    </section>
  )
}
