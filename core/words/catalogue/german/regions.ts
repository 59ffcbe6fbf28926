import type { regions as english } from '../english/regions.ts'
import type { Translated } from '../translated.ts'

/** The language and region of the workroom, and what a new workroom begins with in its language. */
export const regions: Translated<typeof english> = {
  'screen.settings.language': 'Sprache',
  'screen.settings.region': 'Schreibweise wie in',
  'screen.settings.region.example': 'Zum Beispiel {date}, {number} und {money}.',
  'screen.settings.region.about':
    'Sprache und Schreibweise gelten für die Bildschirme und für künftige Blätter. Angebote, die es schon gibt, behalten ihre Sprache; selbst vergebene Namen bleiben, wie sie sind.',
  'begin.tax': 'MwSt.',
  'begin.thread.hand': 'Leinengarn',
  'begin.thread.machine': 'Baumwollgarn',
  'begin.term.cloth': 'Stoff wird vor dem Zuschneiden gewaschen.',
  'begin.term.wool': 'Wolle kann wieder einlaufen, wenn sie heiß gewaschen wird.',
  'begin.term.measures': 'Es gelten die Maße vom genannten Tag; eine Anprobe ist inbegriffen.',
  'begin.term.deposit': 'Die Arbeit beginnt, wenn die Anzahlung eingegangen ist.',
  'begin.term.brought':
    'Mitgebrachter Stoff wird so sorgfältig gewaschen und zugeschnitten wie unser eigener; für seine Fehler, seinen Einlauf und dafür, dass er nicht reicht, stehen wir nicht ein.',
  'refusal.number.typed': 'Hier lässt sich keine Zahl lesen. Ohne Tausenderpunkt schreiben, etwa {example}.',
  'day.letters': 'TMJ',
  'day.pick': 'Im Kalender wählen',
  'refusal.date.typed': '„{text}“ lässt sich nicht als Tag lesen. So schreiben: {example}.',
}
