import { type FormEvent, type KeyboardEvent, useEffect, useRef, useState } from 'react'
import { heardKey, ShownKey, useKeyNames } from '../head/keys.tsx'
import { useDoing, useTell } from '../workroom.tsx'
import type { Offer } from './deeds.ts'
import { askedEarly } from './early.ts'
import { type Offers, useOffers } from './use-offers.ts'

/** The field by which the keys find their way here. */
const FIELD = 'find-field'

/** Leads into the field in the head, with what stands in it chosen, to be typed over. */
export function toFind(): void {
  const field = document.getElementById(FIELD)
  field?.focus()
  if (field instanceof HTMLInputElement) field.select()
}

/** A field in the head that finds clients, cloths, quotes, commissions, notes and places, and does what she types. */
export function Find() {
  const tell = useTell()
  const keyOf = useKeyNames()
  const [text, setText] = useState('')
  const [inside, setInside] = useState(false)
  const offers = useOffers(text, inside)
  const doing = useDoing()
  const form = useRef<HTMLFormElement>(null)
  useEffect(() => {
    if (askedEarly()) toFind()
  }, [])
  const close = () => {
    setText('')
    setInside(false)
  }
  const leave = () => {
    close()
    if (document.activeElement instanceof HTMLElement) document.activeElement.blur()
  }
  /** Arrows go through field and offers as through one list. */
  const move = (event: KeyboardEvent) => {
    if (event.key === 'Escape') return leave()
    const step = { ArrowDown: 1, ArrowUp: -1 }[event.key]
    if (step === undefined) return
    const stops = [...form.current!.querySelectorAll<HTMLElement>('input, a, button')]
    const at = stops.indexOf(document.activeElement as HTMLElement)
    stops[Math.min(stops.length - 1, Math.max(0, at + step))]?.focus()
    event.preventDefault()
  }
  /** Enter in the field takes the first offer. */
  const go = (event: FormEvent) => {
    event.preventDefault()
    form.current!.querySelector<HTMLElement>('a, button')?.click()
  }
  const onTaken = (deed?: () => unknown) => {
    leave()
    if (deed !== undefined) void doing.run(async () => deed())
  }
  return (
    // biome-ignore lint/a11y/useSemanticElements: a form, so that Enter in the field is heard
    <form
      ref={form}
      className="find"
      role="search"
      onSubmit={go}
      onKeyDown={move}
      onFocus={() => setInside(true)}
      onBlur={(event) => {
        if (!event.currentTarget.contains(event.relatedTarget)) close()
      }}
    >
      <span className="field">
        <input
          id={FIELD}
          type="text"
          autoComplete="off"
          aria-label={tell('find.label')}
          placeholder={tell('find.placeholder', { key: keyOf('command') })}
          value={text}
          {...heardKey('command')}
          onChange={(event) => setText(event.target.value)}
        />
      </span>
      <p role="status" className="unseen">
        {said(offers, tell)}
      </p>
      {doing.refused === undefined || inside ? null : (
        <p className="found refusal" role="alert">
          {doing.refused.message}
        </p>
      )}
      {offers === undefined ? null : <Offered offers={offers} onTaken={onTaken} />}
    </form>
  )
}

const all = ({ first, found, after }: Offers): number => first.length + found.length + after.length

function said(offers: Offers | undefined, tell: ReturnType<typeof useTell>): string {
  if (offers === undefined || offers.text === '' || all(offers) === 0) return ''
  const count = all(offers)
  return tell(count === 1 ? 'find.count.one' : 'find.count', { count })
}

type OfferedProps = { offers: Offers; onTaken: (deed?: () => unknown) => void }

function Offered({ offers, onTaken }: OfferedProps) {
  const tell = useTell()
  const { text, first, found, after } = offers
  const lists = [
    { label: tell('find.do'), offers: first, head: found.length + after.length > 0 },
    { label: tell(text === '' ? 'recent.title' : 'find.results'), offers: found, head: true },
    { label: tell('find.then'), offers: after, head: true },
  ].filter((one) => one.offers.length > 0)
  return (
    <div className="found">
      {lists.length === 0 && text !== '' ? <p>{tell('find.none', { text })}</p> : null}
      {lists.map(({ label, offers: lines, head }) => (
        <ul key={label} aria-label={label}>
          {head ? (
            <li className="found-head quiet" aria-hidden="true">
              {label}
            </li>
          ) : null}
          {lines.map((offer) => (
            <li key={offer.id}>
              <Line offer={offer} onTaken={onTaken} />
            </li>
          ))}
        </ul>
      ))}
      {text === '' || lists.length === 0 ? <p className="quiet">{tell('find.instead')}</p> : null}
    </div>
  )
}

function Line({ offer, onTaken }: { offer: Offer; onTaken: OfferedProps['onTaken'] }) {
  const inside = (
    <>
      <span>{offer.words}</span>
      <span className="quiet">
        {offer.aside} {offer.key === undefined ? null : <ShownKey name={offer.key} />}
      </span>
    </>
  )
  // Pressing must not take the focus from the field first: that would close the list under the hand.
  const stay = (event: { preventDefault: () => void }) => event.preventDefault()
  return 'href' in offer ? (
    <a href={offer.href} onMouseDown={stay} onClick={() => onTaken()}>
      {inside}
    </a>
  ) : (
    <button type="button" onMouseDown={stay} onClick={() => onTaken(offer.deed)}>
      {inside}
    </button>
  )
}
