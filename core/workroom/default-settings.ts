import { DEFAULT_BUYING } from '../lay/parameters.ts'
import { DEFAULT_NOTION_STOCK, DEFAULT_RATES, DEFAULT_THREAD_STOCK } from '../price/parameters.ts'
import type { WorkroomSettings } from '../quote/settings.ts'
import { DEFAULT_THREAD_RULES } from '../sew/parameters.ts'
import { regions as english } from '../words/catalogue/english/regions.ts'

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
  terms: [english['begin.term.cloth'], english['begin.term.measures'], english['begin.term.deposit']],
  woolTerm: english['begin.term.wool'],
  broughtTerm: english['begin.term.brought'],
  keepDepositOnceCut: true,
}
