import type { z } from 'zod'
import { binRequests } from './workroom/bin.ts'
import { calendarRequests } from './workroom/calendar.ts'
import { catalogueRequests } from './workroom/catalogue.ts'
import { changeRequests } from './workroom/changes.ts'
import { clientRequests } from './workroom/clients.ts'
import { clothRequests } from './workroom/cloths.ts'
import { commissionRequests } from './workroom/commissions.ts'
import { cuttingRequests } from './workroom/cutting.ts'
import { damagedRequests } from './workroom/damaged.ts'
import { deliveryRequests } from './workroom/deliveries.ts'
import { drawerRequests } from './workroom/drawer.ts'
import { emblemRequests } from './workroom/emblem.ts'
import { findingRequests } from './workroom/finding.ts'
import { fittingRequests } from './workroom/fittings.ts'
import { garmentPaperRequests } from './workroom/garment-papers.ts'
import { garmentRequests } from './workroom/garments.ts'
import { historyRequests } from './workroom/history.ts'
import { houseRequests } from './workroom/house.ts'
import { layRequests } from './workroom/lays.ts'
import { lengthRequests } from './workroom/lengths.ts'
import { measurementSetRequests } from './workroom/measurement-sets.ts'
import { measureRequests } from './workroom/measures.ts'
import { moneyPaperRequests } from './workroom/money-papers.ts'
import { movingRequests } from './workroom/moving.ts'
import { noteRequests } from './workroom/notes.ts'
import { ownConstructionRequests } from './workroom/own-constructions.ts'
import { paperRequests } from './workroom/papers.ts'
import { moneyRequests } from './workroom/payments.ts'
import { peopleRequests } from './workroom/people.ts'
import { previewRequests } from './workroom/previews.ts'
import { promiseRequests } from './workroom/promises.ts'
import { quoteRequests } from './workroom/quotes.ts'
import { rateRequests } from './workroom/rates.ts'
import { recentRequests } from './workroom/recent.ts'
import { redraftRequests } from './workroom/redrafting.ts'
import { remnantRequests } from './workroom/remnants.ts'
import { safekeepingRequests } from './workroom/safekeeping.ts'
import { settingsRequests } from './workroom/settings.ts'
import { shoppingRequests } from './workroom/shopping.ts'
import { stockRequests } from './workroom/stock.ts'
import { tableRequests } from './workroom/table.ts'
import { takingBackRequests } from './workroom/taking-back.ts'
import { takingOutRequests } from './workroom/taking-out.ts'
import { testSquareRequests } from './workroom/test-squares.ts'
import { tickRequests } from './workroom/ticks.ts'
import { timerRequests } from './workroom/timers.ts'
import { timeRequests } from './workroom/times.ts'
import { todayRequests } from './workroom/today.ts'
import { waitingQuoteRequests } from './workroom/waiting-quotes.ts'
import { washingRequests } from './workroom/washing.ts'

/** Everything a shell may ask of the workroom, in the order of the work. */
export const requests = [
  ...houseRequests,
  ...settingsRequests,
  ...emblemRequests,
  ...lengthRequests,
  ...catalogueRequests,
  ...ownConstructionRequests,
  ...clientRequests,
  ...measureRequests,
  ...measurementSetRequests,
  ...clothRequests,
  ...testSquareRequests,
  ...garmentRequests,
  ...layRequests,
  ...quoteRequests,
  ...commissionRequests,
  ...tickRequests,
  ...cuttingRequests,
  ...tableRequests,
  ...washingRequests,
  ...timeRequests,
  ...timerRequests,
  ...peopleRequests,
  ...noteRequests,
  ...changeRequests,
  ...takingBackRequests,
  ...calendarRequests,
  ...waitingQuoteRequests,
  ...stockRequests,
  ...promiseRequests,
  ...moneyRequests,
  ...todayRequests,
  ...findingRequests,
  ...recentRequests,
  ...drawerRequests,
  ...shoppingRequests,
  ...binRequests,
  ...fittingRequests,
  ...redraftRequests,
  ...rateRequests,
  ...deliveryRequests,
  ...remnantRequests,
  ...paperRequests,
  ...garmentPaperRequests,
  ...previewRequests,
  ...moneyPaperRequests,
  ...historyRequests,
  ...safekeepingRequests,
  ...movingRequests,
  ...takingOutRequests,
  ...damagedRequests,
] as const

export type { Places, Strip } from './lay/strip.ts'
export type { Manner } from './lay/types.ts'
export { takeFontsFrom } from './paper/fonts.ts'
export { lookThrough } from './store/damaged.ts'
export { idMaker } from './store/ids.ts'
export { openStore, openStoreOrSaved, type Store } from './store/open.ts'

type Table = (typeof requests)[number]
/** The name of any request; a misspelt one is a fault of types. */
export type RequestName = Table['name']
type Entry<N extends RequestName> = Extract<Table, { name: N }>
/** What a shell or screen sends with a request, and what comes back when it is granted. */
export type InputOf<N extends RequestName> = z.input<Entry<N>['input']>
export type OutputOf<N extends RequestName> = Awaited<ReturnType<Entry<N>['run']>>

export { type Answer, answer } from './workroom/answer.ts'
export { documentFile, documentPath } from './workroom/printing.ts'
export type { Context, LaySearched, LaySearchLimits, Progress } from './workroom/request.ts'
export { backUpIfDue } from './workroom/safekeeping.ts'
export { readerOf } from './workroom/settings.ts'
