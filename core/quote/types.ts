import type { Extras } from '../draft/extras.ts'
import type { ChoiceValue } from '../draft/types.ts'
import type { OtherCloths } from '../lay/as-cut.ts'
import type { Cloth, Lay, Purchase } from '../lay/types.ts'
import type { Body } from '../measure/body.ts'
import type { Estimate } from '../price/estimate.types.ts'
import type { Day } from '../words/dates.ts'
import type { Money } from '../words/money.ts'
import type { Phrase } from '../words/phrase.ts'
import type { WorkroomUnit } from '../words/units.ts'

/** What stands at the head of a sheet, and how the workroom writes. */
export type Letterhead = {
  name: string
  address: string[]
  email: string
  phone: string
  /** Paper the workroom prints on. */
  paper: 'A4' | 'Letter'
  /** BCP 47 locale for numbers, dates and money. */
  locale: string
  /** Unit for lengths on paper. */
  unit: WorkroomUnit
  /** The workroom's mark, if it has one. */
  mark?: Emblem | undefined
}

/** A PNG in the attachments folder by the hash of its bytes, and its size in pixels. */
export type Emblem = { hash: string; width: number; height: number }

/** The cloth of a line as it was when quoted. */
export type QuotedCloth = Cloth & {
  id?: string
  name: string
  fibre: string
  pricePerMetre: Money
  /** Whether a garment pays for the length bought, or for what it uses of a length in stock. */
  charged?: 'bought' | 'used'
}

/** One garment of a quote with everything it was reckoned from. */
export type QuoteLine = {
  id: string
  wearer: { id: string; name: string }
  /**
   * `told` is what was said besides the measures: posture, allergies, notes; `over` what was worn under the tape, which
   * quotes of old have among the rest.
   */
  measurementSet: { id: string; day: Day; told?: string[]; over?: string }
  body: Body
  quantity: number
  construction: string
  title: Phrase
  /** The garment in plain words for the client: one phrase a sentence. */
  description: Phrase[]
  /** Choices as the maker set them, before defaults were filled in. */
  asked: Record<string, ChoiceValue>
  /** What the client also asked for. Quotes of old do not say. */
  extras?: Extras
  cloth: QuotedCloth
  /** Cloths of their own for lining, interlining and facing, where there are any. */
  others?: OtherCloths<QuotedCloth>
  estimate: Estimate
  /** Tax on this garment, where it is not the quote's usual one. */
  taxBasisPoints?: number
  /** Price × quantity. */
  net: Money
  tax: Money
  total: Money
  /** Other ways of making it, for the client to pick from. */
  options?: QuoteOption[]
}

/** The same garment made otherwise: what differs, and its sums. */
export type QuoteOption = {
  /** In what it differs, one phrase a difference. */
  name: Phrase[]
} & Pick<QuoteLine, 'asked' | 'cloth' | 'others' | 'description' | 'estimate' | 'net' | 'tax' | 'total'>

/** When a payment is due. */
export const PAYMENT_TIMES = ['acceptance', 'cutting', 'fitting', 'delivery'] as const
export type PaymentTime = (typeof PAYMENT_TIMES)[number]

/** One lay of several lines' garments, their pieces numbered as `together` does in the order of the lines. */
export type SharedLay = { lines: string[]; cloth: string; lay: Lay; purchase: Purchase; saves: number }

/**
 * A quote as it was made, complete in itself: nothing of it is looked up or reckoned again when it is
 * printed, so it reads the same years later whatever rates, measures or code have changed.
 */
export type QuoteSnapshot = {
  version: 1
  number: string
  day: Day
  validUntil: Day
  letterhead: Letterhead
  customer: { id: string; name: string; address: string[] }
  lines: QuoteLine[]
  /** Garments laid together on one length of their cloth, where that saves some. Quotes of old have none. */
  shared?: SharedLay[]
  /** Postage and packing, where it is charged. */
  shipping?: { net: Money; tax: Money; total: Money }
  net: Money
  tax: { name: string; basisPoints: number; amount: Money }
  /** The tax rate by rate, where lines differ in it. */
  taxes?: { basisPoints: number; net: Money; amount: Money }[]
  total: Money
  deposit: Money
  /** What is paid when; it sums to the total. Quotes of old name only the deposit. */
  payments?: { when: PaymentTime; amount: Money }[]
  terms: string[]
  /** Whether the deposit is kept when the order is cancelled and its cloth is cut. Quotes of old do not say. */
  keepDepositOnceCut?: boolean
  /** Number of the quote that this one replaces. */
  supersedes?: string
  /** The day by which it is done, as it is promised to the client. */
  promised?: Day
  /** The last day on which a yes keeps that day. Quotes of old do not say. */
  answerBy?: Day
}
