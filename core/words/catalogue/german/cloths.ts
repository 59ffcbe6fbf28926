import type { cloths as english } from '../english/cloths.ts'
import type { Translated } from '../translated.ts'

/** Cloths one can buy: who sells them, and what a test square says of their shrinking. */
export const cloths: Translated<typeof english> = {
  'cloth.fibre.help':
    'Wer sie nennt, bekommt das richtige Pflegeblatt und die Bedingung für Wolle. Am Preis ändert sie nichts.',
  'cloth.fibre.linen': 'Leinen',
  'cloth.fibre.hemp': 'Hanf',
  'cloth.fibre.wool': 'Wolle',
  'cloth.fibre.silk': 'Seide',
  'cloth.fibre.cotton': 'Baumwolle',
  'cloth.fibre.linenAndCotton': 'Leinen und Baumwolle',
  'cloth.charged.bought.help':
    'Alles, was dafür zu kaufen ist, bis zum nächsten Verkaufsschritt. Was übrig bleibt, gehört der Werkstatt.',
  'cloth.charged.used.help': 'Nur die Länge, die es braucht: für Stoff, der ohnehin im Haus liegt.',
  'cloth.kept': '{cloth} steht im Buch.',
  'cloth.kept.quote': 'Damit ein Angebot machen',
  'cloth.takeBack': 'Aus dem Buch nehmen',
  'cloth.takeBack.about': 'Er verschwindet aus den Listen, solange kein Angebot und keine Länge von ihm ist.',
  'refusal.cloth.used':
    '{cloth} wird schon gebraucht, von einem Angebot oder einer Länge im Haus, und bleibt deshalb im Buch. Was falsch ist, lässt sich ändern.',
  'cloth.supplier': 'Von wem',
  'cloth.supplier.help': 'Das Geschäft oder die Weberei, wo er bestellt wird.',
  'cloth.leadDays': 'Tage, bis er da ist',
  'cloth.leadDays.help': 'Von der Bestellung bis zur Ankunft.',
  'cloth.from': 'von {supplier}, Lieferzeit in Tagen: {days}',
  'cloth.change': 'Ändern',
  'cloth.change.keep': 'Änderung behalten',
  'cloth.change.quoted': 'Angebote, die es schon gibt, behalten den Stoff, wie er war.',
  'cloth.square': 'Probequadrat',
  'cloth.square.how':
    'Auf diesem Stoff mit Faden ein Quadrat markieren, in beide Richtungen, die Marken mindestens {apart} auseinander. Messen, waschen und trocknen wie später das Stück, flach liegen lassen und zwischen denselben Marken noch einmal messen.',
  'cloth.square.warp': 'Entlang der Webkante',
  'cloth.square.weft': 'Von Webkante zu Webkante',
  'cloth.square.before': 'Vor der Wäsche',
  'cloth.square.after': 'Nach der Wäsche',
  'cloth.square.pair': '{way}, Marken {number}',
  'cloth.square.more': 'Mehr Marken',
  'cloth.square.read': 'Einlauf ausrechnen',
  'cloth.square.says': 'Er läuft {warp} % in der Länge und {weft} % in der Breite ein.',
  'cloth.square.now': 'Im Buch stehen {warp} % und {weft} %.',
  'cloth.square.keep': 'Als Einlauf dieses Stoffs behalten',
}
