import { type KeyName, keyOfPlace } from '../../core/words/keys.ts'
import { PLACES, SCREENS } from '../../core/words/places.ts'
import type { OutputOf } from '../../core/workroom.ts'
import { pressed } from '../head/keys.tsx'
import { useShown } from '../parts/printing.ts'
import { addressOf, goTo } from '../router.ts'
import { FOUND_FIELDS, SHEETS, settingAt } from '../settings/place.ts'
import { useRunning } from '../today/running.tsx'
import { useUndoing } from '../undo/undoing.tsx'
import { useHouse, useTell } from '../workroom.tsx'
import { matched } from './matching.ts'

/** Something of the book that was found by its words. */
export type Hit = OutputOf<'search.find'>['hits'][number]
/** One line of what is offered: a way to go, or something to be done. */
export type Offer = {
  id: string
  words: string
  aside: string
  key?: KeyName
  /** Other words that it is looked for by. */
  also?: string
} & ({ href: string } | { deed: () => unknown })

/** Does something with what a screen shows, as soon as it shows it. */
function onceThere(done: () => boolean): void {
  const until = performance.now() + 5000
  const look = () => {
    if (!done() && performance.now() < until) requestAnimationFrame(look)
  }
  requestAnimationFrame(look)
}
const focused = (): boolean => {
  const field = document.querySelector<HTMLElement>('main form input')
  field?.focus()
  return field !== null
}

/** Everything that can be done or gone to without saying with whom or what. */
export function usePlainDeeds(): Offer[] {
  const tell = useTell()
  const { timer, stop } = useRunning()
  const undoing = useUndoing()
  const [place, doing] = [tell('find.kind.place'), tell('find.kind.deed')]
  const places = PLACES.flatMap((one, i): Offer[] => {
    const [own, ...others] = SCREENS[one]
    const within = tell(`screen.room.${one}`)
    return [
      { id: own!.at, words: within, aside: place, key: keyOfPlace(i), href: `#/${own!.at}` },
      ...others.map(({ at, name, also }) => ({
        ...{ id: at, words: tell(name), href: `#/${at}` },
        ...(also === undefined ? {} : { also: tell(also) }),
        aside: tell('find.within', { place: within }),
      })),
    ]
  })
  const deed = (id: string, words: string, does: () => unknown, key?: KeyName): Offer => ({
    ...{ id, words, aside: doing, deed: does },
    ...(key === undefined ? {} : { key }),
  })
  return [
    deed('newQuote', tell('find.do.newQuote'), () => goTo('desk'), 'new'),
    deed('addClient', tell('find.do.addClient'), () => {
      goTo('clients')
      onceThere(focused)
    }),
    deed('addCloth', tell('find.do.addCloth'), () => {
      goTo('cloths')
      onceThere(focused)
    }),
    deed('printShopping', tell('find.do.printShopping'), () => {
      goTo('cloths', 'shopping')
      onceThere(() => location.hash !== addressOf('cloths', 'shopping') || pressed('print'))
    }),
    ...(timer === undefined ? [] : [deed('stopTimer', tell('find.do.stopTimer'), () => stop(), 'timer')]),
    ...(undoing.last === undefined
      ? []
      : [deed('undo', tell('undo.last', { what: undoing.last }), undoing.undo, 'undo')]),
    ...places,
    ...[...SHEETS, ...FOUND_FIELDS].map((sheet) => ({
      ...{ id: sheet, words: tell(`guiding.find.${sheet}`), also: tell(`guiding.find.${sheet}.also`) },
      ...{ aside: tell('find.within', { place: tell('screen.room.workroom') }), href: settingAt(sheet) },
    })),
  ]
}

/** What can be done with something that was found. */
export type DeedOn = { kind: Hit['kind']; called: string; on: (hit: Hit) => Promise<Offer[]> }

/** All that can be done with something that was found, each for the kinds of things it suits. */
export function useDeedsOn(): DeedOn[] {
  const { workroom } = useHouse()
  const tell = useTell()
  const show = useShown()
  const { start } = useRunning()
  const aside = tell('find.kind.deed')
  /** Several deeds ask for the same commission at once. */
  const asked = new Map<string, Promise<OutputOf<'commission.get'>>>()
  const garmentsOf = async ({ id }: Hit) => {
    const asking = asked.get(id) ?? workroom.ask('commission.get', { id })
    asked.set(id, asking)
    const { commission } = await asking
    return { ...commission, garments: commission.state === 'cancelled' ? [] : commission.garments }
  }
  return [
    {
      ...{ kind: 'client', called: tell('find.do.quoteFor', { name: '' }) },
      on: async ({ id, title: name }) => [
        {
          ...{ id: `quote ${id}`, words: tell('find.do.quoteFor', { name }), aside },
          href: addressOf('desk', undefined, { wearer: id }),
        },
      ],
    },
    {
      ...{ kind: 'commission', called: tell('find.do.timerOn', { number: '', step: '', garment: '' }) },
      on: async (hit) => {
        const { number, state, garments } = await garmentsOf(hit)
        return garments.flatMap(({ id, title, next, steps }): Offer[] => {
          const step = steps.find((one) => one.id === next)
          if (step === undefined || state !== 'open') return []
          const words = tell('find.do.timerOn', { number, step: step.name, garment: title })
          const deed = () => start({ stepIds: [step.id] })
          return [{ id: `timer ${id}`, words, aside, deed }]
        })
      },
    },
    ...(['workOrder', 'cuttingSheet'] as const).map(
      (paper): DeedOn => ({
        ...{ kind: 'commission', called: tell(`find.do.${paper}`, { number: '', garment: '' }) },
        on: async (hit) => {
          const { number, garments } = await garmentsOf(hit)
          return garments.map(({ id: garmentId, title }) => ({
            ...{ id: `${paper} ${garmentId}`, aside },
            words: tell(`find.do.${paper}`, { number, garment: title }),
            deed: () => show(workroom.ask(`${paper}.print`, { garmentId })),
          }))
        },
      }),
    ),
    {
      ...{ kind: 'quote', called: tell('find.do.printQuote', { quote: '' }) },
      on: async ({ id, title: quote }) => [
        {
          ...{ id: `print ${id}`, words: tell('find.do.printQuote', { quote }), aside },
          deed: () => show(workroom.ask('quote.print', { id })),
        },
      ],
    },
  ]
}

/** What of it the text calls for: all its words must be found in what it is called. */
export const calledFor = (text: string, deeds: readonly Offer[]): Offer[] =>
  deeds.filter(({ words, also = '' }) => {
    const { words: count, rest } = matched(text, `${words} ${also}`)
    return count > 0 && rest === ''
  })
