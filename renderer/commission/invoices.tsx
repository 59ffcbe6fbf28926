import { useState } from 'react'
import { printDayShort } from '../../core/words/dates.ts'
import { printMoney } from '../../core/words/money.ts'
import type { Phrase } from '../../core/words/phrase.ts'
import { say } from '../../core/words/say.ts'
import { ActForm, Acts } from '../parts/acts.tsx'
import { TextField } from '../parts/field.tsx'
import { todayHere } from '../parts/today.ts'
import { useTyped } from '../parts/typed.ts'
import { addressOf, usePlace } from '../router.ts'
import { useHouse, useTell } from '../workroom.tsx'
import type { MoneyOf } from './money.tsx'
import { PrintIt } from './print-it.tsx'

/** With this the ids begin of what a commission's address can lead to. */
export const ON_PAGE = 'commission-'
const INVOICE = 'invoice'

/** Where the invoice of a commission is made. */
export const invoiceAt = (commissionId: string): string =>
  addressOf('commissions', commissionId, { at: INVOICE })

type Invoice = MoneyOf['invoices'][number]
type Props = {
  commissionId: string
  /** Of what was called off no invoice is made, and one that holds asks for too much. */
  cancelled: boolean
  invoices: readonly Invoice[]
  onChanged: () => void
}
type Form = { close: () => void }

/** Invoices and the credit notes that cancel them. One that holds is not made a second time. */
export function Invoices({ commissionId, cancelled, invoices, onChanged }: Props) {
  const { workroom, reader } = useHouse()
  const tell = useTell()
  const asked = usePlace().query.get('at') === INVOICE
  const [made, setMade] = useState<{ number: string; lacks: readonly Phrase[] }>()
  const cancelledBy = ({ id }: Invoice) => invoices.find(({ cancels }) => cancels === id)?.number
  const holds = invoices.filter((one) => one.kind === 'invoice' && cancelledBy(one) === undefined)
  return (
    <div id={`${ON_PAGE}${INVOICE}`} tabIndex={-1} className="led-to stack">
      {invoices.length === 0 ? null : <h3>{tell('life.invoice.title')}</h3>}
      <ul className="entries life">
        {invoices.map((one) => {
          const { id, number, kind, day, total } = one
          const by = cancelledBy(one)
          const words = tell('life.invoice.cancel')
          return (
            <li key={id}>
              <p>
                <strong>{number}</strong> · {tell(`money.kind.${kind}`)} · {printDayShort(day, reader.locale)}{' '}
                · {printMoney(total, reader.locale)}
                {by === undefined ? '' : ` · ${tell('life.invoice.cancelledBy', { number: by })}`}
              </p>
              <PrintIt number={number} ask={() => workroom.ask('invoice.print', { id })} />
              {kind === 'invoice' && by === undefined ? (
                <Acts
                  plain
                  acts={[
                    {
                      ...{ id: 'cancel', words, label: tell('life.doing', { doing: words, what: number }) },
                      form: (close) => <Cancel invoice={one} close={close} onDone={onChanged} />,
                    },
                  ]}
                />
              ) : null}
            </li>
          )
        })}
      </ul>
      {made === undefined ? null : (
        <p role="status">
          {[
            tell('life.invoice.made', { number: made.number }),
            ...made.lacks.map((one) => say(one, reader)),
          ].join(' ')}
        </p>
      )}
      {cancelled
        ? holds.map(({ id, number }) => (
            <p key={id} className="under">
              {tell('life.invoice.calledOff', { number })}
            </p>
          ))
        : null}
      {cancelled || holds.length > 0 ? null : (
        <Acts
          opened={asked ? 'make' : undefined}
          acts={[
            {
              ...{ id: 'make', words: tell('life.invoice.make') },
              form: (close) => (
                <Make
                  {...{ commissionId, close }}
                  onMade={(number, lacks) => {
                    setMade({ number, lacks })
                    onChanged()
                  }}
                />
              ),
            },
          ]}
        />
      )}
    </div>
  )
}

function Make({
  commissionId,
  close,
  onMade,
}: Form & { commissionId: string; onMade: (number: string, lacks: readonly Phrase[]) => void }) {
  const { workroom } = useHouse()
  const tell = useTell()
  const { typed, field } = useTyped({ day: todayHere() })
  const work = async () => {
    const { invoice, lacks } = await workroom.ask('invoice.make', { commissionId, day: typed.day })
    onMade(invoice.number, lacks)
  }
  return (
    <ActForm
      label={tell('life.invoice.make')}
      final="invoice.make"
      keep={tell('life.invoice.keep')}
      {...{ close, work }}
    >
      <p>{tell('life.invoice.make.sure')}</p>
      <div className="columns">
        <TextField label={tell('life.invoice.day')} type="date" required {...field('day')} />
      </div>
    </ActForm>
  )
}

function Cancel({ invoice: { id, number }, close, onDone }: Form & { invoice: Invoice; onDone: () => void }) {
  const { workroom } = useHouse()
  const tell = useTell()
  const { typed, field } = useTyped({ reason: '' })
  const work = async () => {
    await workroom.ask('invoice.cancel', { id, reason: typed.reason })
    onDone()
  }
  return (
    <ActForm
      label={tell('life.invoice.cancel')}
      final="invoice.cancel"
      keep={tell('life.invoice.cancelKeep')}
      {...{ close, work }}
    >
      <p>{tell('life.invoice.cancel.sure', { number })}</p>
      <TextField label={tell('life.invoice.reason')} required {...field('reason')} />
    </ActForm>
  )
}
