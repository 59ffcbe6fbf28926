import type { english } from './english.ts'
import { care } from './german/care.ts'
import { cautions } from './german/cautions.ts'
import { choices } from './german/choices.ts'
import { client } from './german/client.ts'
import { cloths } from './german/cloths.ts'
import { commissionLife } from './german/commission-life.ts'
import { days } from './german/days.ts'
import { draft } from './german/draft.ts'
import { faults } from './german/faults.ts'
import { fittings } from './german/fittings.ts'
import { following } from './german/following.ts'
import { garments } from './german/garments.ts'
import { guiding } from './german/guiding.ts'
import { help } from './german/help.ts'
import { house } from './german/house.ts'
import { jobs } from './german/jobs.ts'
import { lay } from './german/lay.ts'
import { lengthsAndMoney } from './german/lengths-and-money.ts'
import { measure } from './german/measure.ts'
import { moneyPapers } from './german/money-papers.ts'
import { own } from './german/own.ts'
import { paper } from './german/paper.ts'
import { papers } from './german/papers.ts'
import { parts } from './german/parts.ts'
import { pattern } from './german/pattern.ts'
import { period } from './german/period.ts'
import { price } from './german/price.ts'
import { quote } from './german/quote.ts'
import { regions } from './german/regions.ts'
import { rooms } from './german/rooms.ts'
import { safekeeping } from './german/safekeeping.ts'
import { screen } from './german/screen.ts'
import { selling } from './german/selling.ts'
import { settings } from './german/settings.ts'
import { sew } from './german/sew.ts'
import { shell } from './german/shell.ts'
import { shopping } from './german/shopping.ts'
import { start } from './german/start.ts'
import { stockAndMoney } from './german/stock-and-money.ts'
import { stockRoom } from './german/stock-room.ts'
import { table } from './german/table.ts'
import { takingOut } from './german/taking-out.ts'
import { times } from './german/times.ts'
import { today } from './german/today.ts'
import { whatItCameTo } from './german/what-it-came-to.ts'
import type { Translated } from './translated.ts'

/** Every phrase of the planner in German, one file for each English one; a phrase that is missing is a type error. */
export const german: Translated<typeof english> = {
  ...lengthsAndMoney,
  ...measure,
  ...garments,
  ...choices,
  ...parts,
  ...draft,
  ...own,
  ...lay,
  ...sew,
  ...price,
  ...quote,
  ...paper,
  ...pattern,
  ...papers,
  ...care,
  ...moneyPapers,
  ...house,
  ...shell,
  ...jobs,
  ...client,
  ...period,
  ...faults,
  ...screen,
  ...selling,
  ...days,
  ...settings,
  ...regions,
  ...safekeeping,
  ...takingOut,
  ...times,
  ...today,
  ...stockAndMoney,
  ...shopping,
  ...cloths,
  ...stockRoom,
  ...commissionLife,
  ...fittings,
  ...following,
  ...cautions,
  ...guiding,
  ...help,
  ...rooms,
  ...start,
  ...table,
  ...whatItCameTo,
}
