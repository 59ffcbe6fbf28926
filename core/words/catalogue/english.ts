import { care } from './english/care.ts'
import { cautions } from './english/cautions.ts'
import { choices } from './english/choices.ts'
import { client } from './english/client.ts'
import { cloths } from './english/cloths.ts'
import { commissionLife } from './english/commission-life.ts'
import { days } from './english/days.ts'
import { draft } from './english/draft.ts'
import { faults } from './english/faults.ts'
import { fittings } from './english/fittings.ts'
import { following } from './english/following.ts'
import { garments } from './english/garments.ts'
import { guiding } from './english/guiding.ts'
import { help } from './english/help.ts'
import { house } from './english/house.ts'
import { jobs } from './english/jobs.ts'
import { lay } from './english/lay.ts'
import { lengthsAndMoney } from './english/lengths-and-money.ts'
import { measure } from './english/measure.ts'
import { moneyPapers } from './english/money-papers.ts'
import { own } from './english/own.ts'
import { paper } from './english/paper.ts'
import { papers } from './english/papers.ts'
import { parts } from './english/parts.ts'
import { pattern } from './english/pattern.ts'
import { period } from './english/period.ts'
import { price } from './english/price.ts'
import { quote } from './english/quote.ts'
import { regions } from './english/regions.ts'
import { rooms } from './english/rooms.ts'
import { safekeeping } from './english/safekeeping.ts'
import { screen } from './english/screen.ts'
import { selling } from './english/selling.ts'
import { settings } from './english/settings.ts'
import { sew } from './english/sew.ts'
import { shell } from './english/shell.ts'
import { shopping } from './english/shopping.ts'
import { start } from './english/start.ts'
import { stockAndMoney } from './english/stock-and-money.ts'
import { stockRoom } from './english/stock-room.ts'
import { table } from './english/table.ts'
import { takingOut } from './english/taking-out.ts'
import { times } from './english/times.ts'
import { today } from './english/today.ts'
import { whatItCameTo } from './english/what-it-came-to.ts'

/**
 * Every sentence, name and label of the planner in English: the one place where words for a person stand, one
 * file a room. A `{name}` is filled by `say`. A translation is one more folder of this shape, joined
 * beside it and named in `languages.ts`, `readers.ts` and `renderer/reader.ts`. Codes are
 * `section.subject.detail`; what refuses something begins with `refusal.`.
 */
export const english = {
  ...lengthsAndMoney,
  ...measure,
  ...garments,
  ...choices,
  ...parts,
  ...draft,
  ...cautions,
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
  ...start,
  ...faults,
  ...rooms,
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
  ...table,
  ...guiding,
  ...help,
  ...whatItCameTo,
} as const
