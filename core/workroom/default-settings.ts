import { DEFAULT_BUYING } from '../lay/parameters.ts'
import { DEFAULT_NOTION_STOCK, DEFAULT_RATES, DEFAULT_THREAD_STOCK } from '../price/parameters.ts'
import type { WorkroomSettings } from '../quote/settings.ts'
import { DEFAULT_THREAD_RULES } from '../sew/parameters.ts'

/** A new workroom's settings, all common practice and all hers to change. */
export const DEFAULT_SETTINGS: WorkroomSettings = {
  letterhead: {
    name: 'Workroom',
    address: [],
    email: '',
    phone: '',
    paper: 'A4',
    locale: 'en-GB',
    unit: 'cm',
  },
  timeZone: 'Europe/London',
  hoursPerWeek: 25,
  rates: DEFAULT_RATES,
  buying: DEFAULT_BUYING,
  threadRules: DEFAULT_THREAD_RULES,
  threadStock: DEFAULT_THREAD_STOCK,
  notionStock: DEFAULT_NOTION_STOCK,
  otherThreads: [],
  ways: { density: {}, perMinute: {}, minutes: {} },
  yearly: { costs: [], soldHours: 1000 },
  validityDays: 30,
  numbering: { quote: 'Q', commission: 'C', yearly: true },
  terms: [
    'Cloth is washed before it is cut, and wool may shrink again if it is washed hot.',
    'Measures are those of the day named; one fitting is included.',
    'Work begins when the deposit has come in.',
  ],
  broughtTerm:
    'Cloth you bring is washed and cut with the same care as ours, but its faults, its shrinking and its running short are not ours to make good.',
  keepDepositOnceCut: true,
}
