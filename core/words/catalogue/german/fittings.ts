import type { fittings as english } from '../english/fittings.ts'
import type { Translated } from '../translated.ts'

/** What a fitting leads to: work, pieces cut again, and a garment drafted again. */
export const fittings: Translated<typeof english> = {
  'paper.step.cameUp': 'Unterwegs dazugekommen',
  'fitting.step.alter': 'Ändern, was sich bei der Anprobe am {day} ergab',
  'fitting.step.recut': 'Neu zuschneiden: {pieces}',
  'refusal.fitting.noMeasures': 'Mindestens ein geändertes Maß eintragen.',
  'redraft.step.cut': 'Für den neuen Schnitt zuschneiden: {pieces}',
  'refusal.redraft.noPiece': '{piece} ist kein Teil des neuen Schnitts. Teile aus der Liste ankreuzen.',
  'refusal.redraft.same':
    'Genau so ist der Schnitt schon. Etwas anderes wählen, andere Maße nehmen oder alles lassen.',
  'redraft.title': 'Schnitt neu zeichnen',
  'redraft.about':
    'Teile, Schritte, Blätter und Stoff richten sich nach dem neuen Schnitt. Was fertig ist, bleibt fertig, und der Preis bleibt wie vereinbart.',
  'redraft.garment': 'Welches Stück',
  'redraft.set': 'genommen am {day}',
  'redraft.set.now': 'genommen am {day}, danach ist er jetzt gezeichnet',
  'redraft.keep': 'So machen',
  'redraft.changes': 'Was sich ändern würde',
  'redraft.none': 'Kein Teil ändert sich.',
  'redraft.piece': 'Teil, im Zuschnitt',
  'redraft.before': 'War',
  'redraft.after': 'Wäre',
  'redraft.smaller': 'geschnitten: lässt sich kleiner schneiden',
  'redraft.anew': 'geschnitten: braucht neuen Stoff',
  'redraft.added': 'Neu: {pieces}.',
  'redraft.gone': 'Nicht mehr nötig: {pieces}.',
  'redraft.figures':
    'Stoff zu kaufen: vorher {before}, jetzt {after}. Arbeitsstunden: vorher {hoursBefore}, jetzt {hoursAfter}.',
  'redraft.recut': 'Das Stück ist schon zugeschnitten. Teile, die der neue Schnitt verlangt',
  'redraft.part.found': '1 von 3: was sich ergab',
  'redraft.part.measures': '2 von 3: Maße, die sich geändert haben',
  'redraft.part.draft': '3 von 3: was anders gemacht wird',
  'redraft.measure': 'Neu Maß nehmen',
  'redraft.measure.about':
    'Nur eintragen, was sich geändert hat. Der Rest wird übernommen, und ein neuer Maßsatz trägt das heutige Datum.',
  'redraft.measure.pass': 'Kein Maß hat sich geändert, weiter',
  'redraft.measure.keep': 'Neue Maße behalten',
}
