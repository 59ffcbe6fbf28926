import { useEffect, useRef, useState } from 'react'
import { say } from '../../core/words/say.ts'
import { addressOf } from '../router.ts'
import { useHouse, useTell } from '../workroom.tsx'
import { calledFor, type DeedOn, type Hit, type Offer, useDeedsOn, usePlainDeeds } from './deeds.ts'
import { matched } from './matching.ts'

/** So many are shown of each sort; whoever looks for more types another letter. */
const MOST = 8
/** With so many of what was found something is offered to be done. */
const MOST_ON = 3

/** What is offered for a text, in the order in which it stands. */
export type Offers = {
  /** The text they are for; empty, they are what was changed lately. */
  text: string
  /** What the words themselves call for, to be done. */
  first: readonly Offer[]
  found: readonly Offer[]
  /** What can be done with what was found. */
  after: readonly Offer[]
}

/** What is offered for a text as it stands now; with an empty one, what was changed lately. */
export function useOffers(text: string, inside: boolean): Offers | undefined {
  const { workroom } = useHouse()
  const tell = useTell()
  const plain = usePlainDeeds()
  const deedsOn = useDeedsOn()
  const worn = useWorn()
  const tools = useRef({ plain, deedsOn, worn })
  useEffect(() => {
    tools.current = { plain, deedsOn, worn }
  })
  const [offers, setOffers] = useState<Offers>()
  const asked = text.trim()
  useEffect(() => {
    if (asked === '' && !inside) {
      setOffers(undefined)
      return
    }
    let current = true
    const { plain: deeds, deedsOn: on, worn: wornOf } = tools.current
    const find = (words: string): Promise<readonly Hit[]> =>
      words === ''
        ? workroom.ask('recent.list', { most: MOST }).then(({ recent }) => recent.map(asHit))
        : workroom.ask('search.find', { text: words, most: MOST }).then(({ hits }) => hits)
    const look = async (): Promise<Offers> => {
      const hits = await find(asked)
      const found = hits.map((hit) => offerOf(hit, tell(`find.kind.${hit.kind}`), wornOf(hit)))
      if (asked === '') return { text: asked, first: [], found, after: [] }
      const [called, after] = await Promise.all([wished(asked, on, find), doneWith(firstOfKinds(hits), on)])
      const first = [...calledFor(asked, deeds), ...called].slice(0, MOST)
      return {
        text: asked,
        first,
        found,
        after: after.filter(({ id }) => !first.some((one) => one.id === id)),
      }
    }
    look().then(
      (next) => current && setOffers(next),
      // A text that cannot be searched for finds nothing.
      () => current && setOffers({ text: asked, first: calledFor(asked, deeds), found: [], after: [] }),
    )
    return () => {
      current = false
    }
  }, [workroom, asked, inside, tell])
  return asked === '' && !inside ? undefined : offers
}

/** What is asked to be done, with whom or what the rest of the text says; without a rest, with what was changed lately. */
async function wished(
  text: string,
  deedsOn: readonly DeedOn[],
  find: (words: string) => Promise<readonly Hit[]>,
): Promise<Offer[]> {
  const called = deedsOn.flatMap((deed) => {
    const { words, rest } = matched(text, deed.called)
    return words === 0 ? [] : [{ deed, words, rest }]
  })
  const best = Math.max(0, ...called.map(({ words }) => words))
  const offers = called
    .filter(({ words }) => words === best)
    .map(async ({ deed, rest }) => {
      const hits = (await find(rest)).filter(({ kind }) => kind === deed.kind).slice(0, MOST_ON)
      return (await Promise.all(hits.map(deed.on))).flat()
    })
  return (await Promise.all(offers)).flat()
}

const doneWith = async (hits: readonly Hit[], deedsOn: readonly DeedOn[]): Promise<Offer[]> => {
  const offers = hits.flatMap((hit) =>
    deedsOn.filter(({ kind }) => kind === hit.kind).map(({ on }) => on(hit)),
  )
  return (await Promise.all(offers)).flat()
}

/** The best of each kind. */
const firstOfKinds = (hits: readonly Hit[]): Hit[] =>
  hits.filter(({ kind }, i) => hits.findIndex((one) => one.kind === kind) === i)

const asHit = (one: Omit<Hit, 'excerpt'>): Hit => ({ ...one, excerpt: '' })

/** A note's title is the number of its commission, and then the id. */
const noteOf = ({ title }: Hit) => {
  const [number = '', id = ''] = title.split(' ')
  return { number, id }
}

/** Says of a quote or a commission what is made, and for whom. */
function useWorn(): (hit: Hit) => string[] {
  const { reader } = useHouse()
  const tell = useTell()
  return ({ garments }) =>
    garments.map(({ title, wearer }) => tell('paper.garment.forWhom', { title: say(title, reader), wearer }))
}

const offerOf = (hit: Hit, aside: string, worn: readonly string[]): Offer => ({
  ...{ id: hit.id, aside, href: hrefOf(hit) },
  words: hit.kind === 'note' ? `${noteOf(hit).number}: ${hit.excerpt}` : [hit.title, ...worn].join(' · '),
})

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
