import { expect, test } from 'vitest'
import { quoteSheet } from '../../core/paper/quote-sheet.ts'
import type { QuoteSnapshot } from '../../core/quote/types.ts'
import { WOMAN } from '../support/bodies.ts'
import { workroom } from '../support/store.ts'
import { collisions, outsideMargins } from './boxes.ts'

type Id = { id: string }
type Catalogue = { constructions: Id[] }

test.each([
  ['en-GB', ['A4', 'Letter']],
  ['en-US', ['A4', 'Letter']],
  ['de-DE', ['A4']],
] as const)(
  'a quote of one garment, as a workroom begins in %s, is one page with its terms and the line to sign: %s',
  async (locale, papers) => {
    const { done } = workroom()
    await done('settings.set', {
      revision: 0,
      changes: {
        letterhead: { name: 'Weir Lane', address: ['The Weir', 'Fulling'], email: 'b@weir.example', locale },
      },
    })
    const { settings } = await done<{ settings: { rates: { currency: string } } }>('settings.get')
    const { client } = await done<{ client: Id }>('client.add', {
      ...{ name: 'Þórunn Vale', address: ['2 Ferry Steps', 'Harrowby'] },
    })
    const { measurementSet } = await done<{ measurementSet: Id }>('measurementSet.add', {
      ...{ clientId: client.id, measures: WOMAN },
    })
    const { cloth } = await done<{ cloth: Id }>('cloth.add', {
      ...{ name: 'Natural linen, narrow loom', fibre: 'wool', width: '150 cm' },
      pricePerMetre: { minor: 1650, currency: settings.rates.currency },
    })
    const { constructions } = await done<Catalogue>('constructions.list')
    const long: string[] = []
    for (const { id } of constructions) {
      const line = { wearerId: client.id, measurementSetId: measurementSet.id, clothId: cloth.id }
      const { quote } = await done<{ quote: { snapshot: QuoteSnapshot } }>('quote.save', {
        ...{ customerId: client.id, promise: '2026-12-24', lines: [{ ...line, construction: id }] },
      })
      for (const paper of papers) {
        const { snapshot } = quote
        const sheet = quoteSheet({ ...snapshot, letterhead: { ...snapshot.letterhead, paper } })
        for (const page of sheet.pages) {
          expect(collisions(page)).toEqual([])
          // Below the margin there is nothing but the foot.
          expect(outsideMargins(page, paper)).toHaveLength(2)
        }
        if (sheet.pages.length > 1) long.push(`${id} on ${paper}`)
      }
    }
    expect(long).toEqual([])
  },
  60_000,
)
