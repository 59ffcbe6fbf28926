import type { Phrase } from '../../core/words/phrase.ts'
import { say } from '../../core/words/say.ts'
import { useHouse, useTell } from '../workroom.tsx'

/** Garments as they are named in a line: what each is and who wears it. */
export type Made = { title: Phrase; wearer: string }

/** So many are named where there is one line for all of them. */
const NAMED = 3

/** Names garments, who wears them, and who pays where that is somebody else. */
export function useForWhom(): (garments: readonly Made[], payer: string) => string {
  const { reader } = useHouse()
  const tell = useTell()
  return (garments, payer) => {
    const names = garments.map(({ title, wearer }) =>
      tell('paper.garment.forWhom', { title: say(title, reader), wearer }),
    )
    const apart = [...new Set(names)]
    const named = apart.slice(0, NAMED)
    if (apart.length > NAMED) named.push(tell('screen.more', { count: apart.length - NAMED }))
    const what = named.join(', ')
    if (what === '') return payer
    return garments.every(({ wearer }) => wearer === payer) ? what : tell('screen.paidBy', { what, payer })
  }
}
