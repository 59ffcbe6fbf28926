import type { client as english } from '../english/client.ts'
import type { Translated } from '../translated.ts'

/** Die Seite einer Kundin, und was die Liste von ihr sagt. */
export const client: Translated<typeof english> = {
  'client.made': 'Angeboten und angefertigt',
  'client.made.paidBy': 'bezahlt von {customer}',
  'client.made.state': 'Was daraus wurde',
  'client.made.open': 'in Arbeit',
  'client.change': 'Name, Adresse oder Notiz ändern',
  'client.change.keep': 'Behalten',
  'client.name': 'Name',
  'client.phone': 'Telefon',
  'client.birthDay': 'Geboren am',
  'client.birthDay.help':
    'Bei Kindern: Davon hängt ab, was für Schnüre gilt und wie Größen beurteilt werden.',
  'client.note': 'Notiz: Allergien, Vorlieben, wie man sie am besten erreicht',
  'client.unmeasured': 'noch nicht gemessen',
  'client.measured': 'gemessen {day}',
  'client.open.one': 'ein Auftrag in Arbeit',
  'client.open': '{count} Aufträge in Arbeit',
  'client.had.one': 'ein Stück, übergeben {day}',
  'client.had': '{count} Stücke, das letzte übergeben {day}',
  'client.takenBy': 'Gemessen von: {by}',
  'client.over': 'gemessen über: {over}',
  'client.onlyNeeded': 'Nur was eine Tunika braucht',
}
