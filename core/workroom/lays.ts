import { z } from 'zod'
import { asCut, piecesFrom } from '../lay/as-cut.ts'
import { assertCuttable, type Fault } from '../lay/check.ts'
import { layOf } from '../lay/lay-of.ts'
import { purchaseOf } from '../lay/purchase.ts'
import { together } from '../lay/together.ts'
import { MANNERS } from '../lay/types.ts'
import { judgedLay, searchStart, wishedLay } from '../lay/wished-lay.ts'
import { listCloths } from '../store/cloths.ts'
import { readLength } from '../words/length.ts'
import { type Money, priceOfLength } from '../words/money.ts'
import { type Phrase, phrase } from '../words/phrase.ts'
import { Refusal, refusingAt } from '../words/refusal.ts'
import { clothOf } from './cloths.ts'
import * as inputs from './inputs.ts'
import { type Context, request } from './request.ts'
import { settingsOf } from './settings.ts'
import { clothFor, draftFor, garment, onCloth, otherClothsFor } from './wanted.ts'

const onTable = { ...garment, ...onCloth, lay: inputs.layWish }

/** The cutting layout: looked for, laid by hand, and on other cloths. */
export const layRequests = [
  request({
    name: 'lay.best',
    kind: 'job',
    about: 'Looks for a shorter lay for some seconds. Stopped before, it gives the best it has.',
    input: z.strictObject({
      ...onTable,
      seconds: z.number().min(0.5).max(3600).default(20),
      seed: z.int().default(1),
    }),
    run: async (input, context) => {
      const { pieces, cloth, buying, wish } = tableFor(input, context)
      const { layable, start } = refusingAt('lay', () => searchStart(pieces, cloth, buying, wish))
      const laid = (places: typeof start) =>
        assertCuttable(layOf(pieces, layable, places), pieces, cloth, wish)
      const first = laid(start)
      const { places, ended } = await context.searchLay(layable, start, {
        seconds: input.seconds,
        seed: input.seed,
        signal: context.signal,
        tick: (done, best) => context.report({ done, doing: 'lay.best', best: { lay: laid(best) } }),
      })
      const lay = laid(places)
      return {
        lay,
        purchase: purchaseOf(lay, cloth, buying),
        firstLength: first.length,
        ended,
        ...(ended === 'broken' ? { note: phrase('lay.broken') } : {}),
      }
    },
  }),
  request({
    name: 'lay.judge',
    kind: 'query',
    about: 'What is wrong with pieces laid by hand; nothing, if they can be cut.',
    input: z.strictObject(onTable),
    run: (input, context) => {
      const { pieces, cloth, buying, wish } = tableFor(input, context)
      const placements = wish.placements
      if (placements === undefined) throw new Refusal(phrase('refusal.lay.noPlaces'), 'lay.placements')
      const { lay, faults } = refusingAt('lay', () =>
        judgedLay(pieces, cloth, buying, { ...wish, placements }),
      )
      return { ...(lay === undefined ? {} : { lay }), faults: faults.map(toldOf) }
    },
  }),
  request({
    name: 'lay.manners',
    kind: 'query',
    about:
      'The first lay on cloth lying flat, folded along its length, or torn in bands, with what each costs.',
    input: z.strictObject(onTable),
    run: (input, context) => {
      const { pieces, cloth, buying, wish } = tableFor(input, context)
      return {
        manners: MANNERS.map((manner) =>
          onTrial({ manner }, () => {
            const lay = wishedLay(pieces, cloth, buying, { ...wish, ...MOVABLE, manner })
            return bought(lay, cloth, buying)
          }),
        ),
      }
    },
  }),
  request({
    name: 'lay.together',
    kind: 'query',
    about:
      'Several garments laid out on one length of cloth, and what that saves against one length for each.',
    input: z.strictObject({
      garments: z.array(z.strictObject(garment)).min(1).max(12),
      ...onCloth,
      lay: inputs.layWish,
    }),
    run: (input, context) => {
      const { buying } = settingsOf(context)
      const cloth = clothFor(input, context)
      const drafts = input.garments.map((asked, i) =>
        refusingAt(`garments.${i}`, () => asCut(draftFor(asked, context), cloth)),
      )
      const wish = { ...input.lay, quantity: 1 }
      const pieces = together(drafts)
      const lay = refusingAt('lay', () => wishedLay(pieces, cloth, buying, wish))
      const purchase = purchaseOf(lay, cloth, buying)
      const apart = drafts.reduce(
        (sum, draft) =>
          sum + bought(wishedLay(draft.pieces, cloth, buying, { ...wish, ...MOVABLE }), cloth, buying).toBuy,
        0,
      )
      return { lay, pieces, purchase, saves: apart - purchase.toBuy }
    },
  }),
  request({
    name: 'lay.compare',
    kind: 'job',
    about: 'The same garment on every cloth in the book, and on the given cloth in other widths.',
    input: z.strictObject({
      ...onTable,
      widths: z.array(inputs.length).max(20).default([]).describe('other widths of the same cloth'),
    }),
    run: async (input, context) => {
      const { piecesOn, cloth, buying, wish } = tableFor(input, context)
      const cloths = [
        ...listCloths(context.store.db).map(clothOf),
        ...input.widths.map((width) => ({
          ...cloth,
          id: undefined,
          width: readLength(width, settingsOf(context).letterhead.unit),
        })),
      ]
      const rows = []
      for (const [i, one] of cloths.entries()) {
        context.signal.throwIfAborted()
        context.report({ done: i / cloths.length, doing: 'lay.compare' })
        const { id, name, width } = one
        rows.push(
          onTrial({ id, name, width }, () =>
            bought(wishedLay(piecesOn(one), one, buying, { ...wish, ...MOVABLE, flaws: [] }), one, buying),
          ),
        )
        // Whoever waits for something else is let in between.
        await new Promise((resolve) => setImmediate(resolve))
      }
      return { rows }
    },
  }),
]

/** Nothing is held in its place where the cloth or its manner changes. */
const MOVABLE = { locked: [], placements: undefined, tears: undefined }

type TableAsked = Parameters<typeof draftFor>[0] &
  Parameters<typeof clothFor>[0] &
  Parameters<typeof otherClothsFor>[0] & { lay: z.output<typeof inputs.layWish> }

function tableFor(input: TableAsked, context: Context) {
  const { buying } = settingsOf(context)
  const plain = draftFor(input, context)
  const cloth = clothFor(input, context)
  const others = otherClothsFor(input, context)
  /** What of the garment lies on a cloth in the place of its own. */
  const piecesOn = (one: typeof cloth) => piecesFrom(asCut(plain, one, others).pieces, 'main', others)
  return {
    ...{ piecesOn, cloth, buying },
    pieces: refusingAt('cloth', () => piecesOn(cloth)),
    wish: { ...input.lay, quantity: 1 },
  }
}

type OnSale = Parameters<typeof purchaseOf>[1] & { pricePerMetre: Money }

/** What a lay comes to at the counter. */
function bought(lay: ReturnType<typeof wishedLay>, cloth: OnSale, rules: Parameters<typeof purchaseOf>[2]) {
  const { toBuy } = purchaseOf(lay, cloth, rules)
  const cost = priceOfLength(cloth.pricePerMetre, toBuy)
  return { length: lay.length, toBuy, cost, used: lay.used }
}

/** A trial that may turn out impossible is a row with the reason. */
function onTrial<Name extends object, Found extends object>(
  name: Name,
  trial: () => Found,
): Name & (Found | { refused: Phrase }) {
  try {
    return { ...name, ...trial() }
  } catch (error) {
    if (!(error instanceof Refusal)) throw error
    return { ...name, refused: error.phrase }
  }
}

/** A fault of a lay made by hand: the copies it concerns, and a sentence. */
function toldOf(fault: Fault): { copies: string[]; sentence: Phrase } {
  const copies = 'copy' in fault ? [fault.copy, ...('other' in fault ? [fault.other] : [])] : []
  return { copies, sentence: phrase(`lay.fault.${fault.kind}`) }
}
