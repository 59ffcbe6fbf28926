import type { PhraseCode } from '../../core/words/phrase.ts'
import type { RequestName } from '../../core/workroom.ts'

/** What cannot be taken back, and the sentence that says so before it is done and after. */
export const FINAL = {
  'client.forget': 'undo.final.forget',
  'measurementSet.change': 'undo.final.measures',
  'quote.save': 'undo.final.quote',
  'quote.accept': 'undo.final.accept',
  'commission.enter': 'undo.final.accept',
  'garment.washed': 'undo.final.washed',
  'garment.draftAgain': 'undo.final.draftAgain',
  'garment.took': 'undo.final.took',
  'fitting.hold': 'undo.final.fitting',
  'fitting.measure': 'undo.final.measures',
  'payment.add': 'undo.final.payment',
  'invoice.make': 'undo.final.invoice',
  'invoice.cancel': 'undo.final.credit',
  'stock.measure': 'undo.final.measured',
  'stock.callOff': 'undo.final.callOff',
  'remnant.toStock': 'undo.final.toStock',
  'timer.drop': 'undo.final.drop',
  'ownConstruction.save': 'undo.final.own',
  'ownConstruction.read': 'undo.final.own',
} as const satisfies Partial<Record<RequestName, PhraseCode>>
export type Final = keyof typeof FINAL

/** After these nothing of before can be taken back by what was noted of it: another book is open. */
export const ANOTHER_BOOK: readonly RequestName[] = ['backup.restore', 'store.import', 'workroom.sample']
