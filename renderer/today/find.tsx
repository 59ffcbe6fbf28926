import { type FormEvent, type KeyboardEvent, useEffect, useRef, useState } from 'react'
import { phrase } from '../../core/words/phrase.ts'
import { say } from '../../core/words/say.ts'
import type { OutputOf } from '../../core/workroom.ts'
import { addressOf } from '../router.ts'
import { useHouse, useTell } from '../workroom.tsx'

type Hit = OutputOf<'search.find'>['hits'][number]

/** So many are shown; whoever looks for more types another letter. */
const MOST = 8

/** A field in the head that finds clients, cloths, quotes, commissions and notes while she types. */
export function Find() {
  const tell = useTell()
  const [text, setText] = useState('')
  const [inside, setInside] = useState(false)
  const found = useFound(text)
  const recent = useRecent(inside && text.trim() === '')
  const field = useRef<HTMLInputElement>(null)
  const form = useRef<HTMLFormElement>(null)
  useSlash(field)
  const close = () => {
    setText('')
    setInside(false)
  }
  const leave = () => {
    close()
    if (document.activeElement instanceof HTMLElement) document.activeElement.blur()
  }
  /** Arrows go through field and links as through one list. */
  const move = (event: KeyboardEvent) => {
    if (event.key === 'Escape') return leave()
    const step = { ArrowDown: 1, ArrowUp: -1 }[event.key]
    if (step === undefined) return
    const stops = [...form.current!.querySelectorAll<HTMLElement>('input, a')]
    const at = stops.indexOf(document.activeElement as HTMLElement)
    stops[Math.min(stops.length - 1, Math.max(0, at + step))]?.focus()
    event.preventDefault()
  }
  /** Enter in the field follows the first link. */
  const go = (event: FormEvent) => {
    event.preventDefault()
    form.current!.querySelector('a')?.click()
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
          ref={field}
          type="text"
          autoComplete="off"
          aria-label={tell('find.label')}
          aria-keyshortcuts="/"
          placeholder={tell('find.placeholder')}
          value={text}
          onChange={(event) => setText(event.target.value)}
        />
      </span>
      <p role="status" className="unseen">
        {found === undefined || found.hits.length === 0
          ? ''
          : tell(found.hits.length === 1 ? 'find.count.one' : 'find.count', { count: found.hits.length })}
      </p>
      {found === undefined ? null : <Hits {...found} onGone={leave} />}
      {found !== undefined || recent.length === 0 ? null : (
        <Links hits={recent} label={tell('recent.title')} head onGone={leave} />
      )}
    </form>
  )
}

function Hits({ hits, text, onGone }: { hits: readonly Hit[]; text: string; onGone: () => void }) {
  const tell = useTell()
  if (hits.length === 0) return <p className="found quiet">{tell('find.none', { text })}</p>
  return <Links hits={hits} label={tell('find.results')} onGone={onGone} />
}

type LinksProps = {
  hits: readonly Hit[]
  label: string
  /** Whether the label is shown over the list too. */
  head?: boolean
  onGone: () => void
}

function Links({ hits, label, head = false, onGone }: LinksProps) {
  const { reader } = useHouse()
  return (
    <ul className="found" aria-label={label}>
      {head ? (
        <li className="found-head quiet" aria-hidden="true">
          {label}
        </li>
      ) : null}
      {hits.map((hit) => (
        <li key={hit.id}>
          {/* Pressing must not take the focus from the field first: that would close the list under the hand. */}
          <a href={hrefOf(hit)} onMouseDown={(event) => event.preventDefault()} onClick={onGone}>
            <span>{hit.kind === 'note' ? `${noteOf(hit).number}: ${hit.excerpt}` : hit.title}</span>
            <span className="quiet">{say(phrase(`find.kind.${hit.kind}`), reader)}</span>
          </a>
        </li>
      ))}
    </ul>
  )
}

/** What was changed last, asked for when the empty field is entered; nothing otherwise. */
function useRecent(wanted: boolean): readonly Hit[] {
  const { workroom } = useHouse()
  const [recent, setRecent] = useState<readonly Hit[]>([])
  useEffect(() => {
    let current = true
    if (!wanted) setRecent([])
    else
      workroom.ask('recent.list', { most: MOST }).then(
        (found) => current && setRecent(found.recent.map((one) => ({ ...one, excerpt: '' }))),
        // Whoever looks for something can still type.
        () => current && setRecent([]),
      )
    return () => {
      current = false
    }
  }, [workroom, wanted])
  return recent
}

/** What is found for the text as it stands now; nothing while it is empty. */
function useFound(text: string) {
  const { workroom } = useHouse()
  const [found, setFound] = useState<{ text: string; hits: readonly Hit[] }>()
  const asked = text.trim()
  useEffect(() => {
    let current = true
    if (asked === '') setFound(undefined)
    else
      workroom.ask('search.find', { text: asked, most: MOST }).then(
        ({ hits }) => current && setFound({ text: asked, hits }),
        // A text that cannot be searched for finds nothing.
        () => current && setFound({ text: asked, hits: [] }),
      )
    return () => {
      current = false
    }
  }, [workroom, asked])
  return found
}

/** The key / leads into the field, unless something is being typed. */
function useSlash(field: { current: HTMLInputElement | null }) {
  useEffect(() => {
    const hear = (event: globalThis.KeyboardEvent) => {
      if (event.key !== '/' || event.ctrlKey || event.altKey || event.metaKey) return
      if ((event.target as Element).closest('input, textarea, select, [contenteditable]') !== null) return
      event.preventDefault()
      field.current?.focus()
    }
    addEventListener('keydown', hear)
    return () => removeEventListener('keydown', hear)
  }, [field])
}

/** A note's title is the number of its commission, and then the id. */
const noteOf = ({ title }: Hit) => {
  const [number = '', id = ''] = title.split(' ')
  return { number, id }
}

function hrefOf(hit: Hit): string {
  switch (hit.kind) {
    case 'client':
      return addressOf('clients', hit.id)
    case 'cloth':
      return addressOf('cloths')
    case 'quote':
      return addressOf('quotes', hit.id)
    case 'commission':
      return addressOf('commissions', hit.id)
    case 'note':
      return addressOf('commissions', noteOf(hit).id)
  }
}
