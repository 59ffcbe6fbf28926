import type { period as english } from '../english/period.ts'
import type { Translated } from '../translated.ts'

/** Zeiträume, von denen Zahlen sind. */
export const period: Translated<typeof english> = {
  'period.of': 'Übergeben in',
  'period.all': 'der ganzen Zeit',
  'period.thisMonth': 'diesem Monat',
  'period.lastMonth': 'dem letzten Monat',
  'period.thisYear': 'diesem Jahr',
  'period.lastYear': 'dem letzten Jahr',
  'period.days': 'eigenen Tagen',
  'period.from': 'Von',
  'period.to': 'Bis',
  'period.none': 'In dieser Zeit wurde nichts übergeben.',
  'times.accounts.byMonth': 'Monat für Monat',
  'times.accounts.month': 'Monat',
  'times.accounts.delivered': 'Übergeben',
  'times.accounts.sums.price': 'Preise vor Steuer',
  'times.accounts.sums.costs': 'gingen in Stoff, Garn und Werkstatt',
  'times.accounts.sums.left': 'blieben übrig',
  'times.accounts.sums.hours': 'gearbeitet',
  'times.accounts.sums.perHour': 'je Stunde',
  'times.accounts.knownInPart':
    'Für {known} von {garments} Kleidungsstücken sind Zeiten eingetragen, für {part} davon nur teilweise: Was fehlt, zählt wie angeboten.',
  'times.accounts.left': 'Bleibt',
  'times.accounts.low': 'weniger als das Ziel',
  'times.accounts.worstFirst': 'Das schlechtest bezahlte zuerst',
  'times.account.steps': 'Schritt für Schritt',
  'times.account.step': 'Schritt',
  'times.account.worst': 'lag am weitesten daneben',
}
