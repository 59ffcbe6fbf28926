import { printDate } from '../../core/words/dates.ts'
import { printMoney } from '../../core/words/money.ts'
import { say } from '../../core/words/say.ts'
import { Button } from '../parts/button.tsx'
import { Refusal } from '../parts/refusal.tsx'
import { goTo } from '../router.ts'
import { useDoing, useHouse, useQuery, useTell } from '../workroom.tsx'

/** One quote as it was made, to print, and to take as accepted or declined. */
export function Quote({ id }: { id: string }) {
  const { workroom, reader } = useHouse()
  const tell = useTell()
  const { value, refused, reload } = useQuery('quote.get', { id })
  const doing = useDoing()
  if (value === undefined) return <Refusal sentence={refused} />
  const { quote } = value
  const { snapshot } = quote
  const print = () =>
    doing.run(async () => {
      const { document } = await workroom.ask('quote.print', { id })
      const shown = await workroom.bridge.paper(document.id)
      if (!shown.ok) throw new Error(shown.error.message)
    })
  const accept = () =>
    doing.run(async () => {
      const { commission } = await workroom.ask('quote.accept', { id })
      goTo('commissions', commission.id)
    })
  const decline = () => doing.run(() => workroom.ask('quote.decline', { id })).then(reload)
  return (
    <div className="stack narrow">
      <div className="between">
        <div>
          <h1>{tell('screen.quote.title', { number: quote.number, customer: snapshot.customer.name })}</h1>
          <p className="quiet">
            {printDate(snapshot.day, reader.locale)} · {tell(`quote.state.${quote.state}`)}
            {snapshot.supersedes === undefined
              ? ''
              : ` · ${tell('paper.quote.supersedes')} ${snapshot.supersedes}`}
          </p>
        </div>
        <div className="row">
          <Button main={quote.state !== 'sent'} busy={doing.busy} onPress={() => void print()}>
            {tell('screen.quote.print')}
          </Button>
          {quote.state === 'sent' ? (
            <>
              <Button main busy={doing.busy} onPress={() => void accept()}>
                {tell('screen.quote.accept')}
              </Button>
              <Button busy={doing.busy} onPress={() => void decline()}>
                {tell('screen.quote.decline')}
              </Button>
            </>
          ) : null}
        </div>
      </div>
      <Refusal sentence={doing.refused?.message} />
      {snapshot.lines.map((line) => (
        <section key={line.id} className="sheet stack">
          <div className="between">
            <h2>
              {tell('paper.garment.forWhom', { title: say(line.title, reader), wearer: line.wearer.name })}
            </h2>
            <span className="amount">
              {line.quantity === 1 ? '' : `${line.quantity} × `}
              {printMoney(line.estimate.price.net, reader.locale)}
            </span>
          </div>
          <p>{line.description.map((sentence) => say(sentence, reader)).join(' ')}</p>
        </section>
      ))}
      <p className="between">
        <span>
          {tell('screen.quote.deposit', { deposit: snapshot.deposit, day: { date: snapshot.validUntil } })}
        </span>
        <strong>{printMoney(snapshot.total, reader.locale)}</strong>
      </p>
    </div>
  )
}
