import type { pattern as english } from '../english/pattern.ts'
import type { Translated } from '../translated.ts'

/** The full-size pattern of what cannot be chalked from measures alone. */
export const pattern: Translated<typeof english> = {
  'draw.pattern.part': 'Ausschnitt um die Rundung; der Rest wird nach Maß angezeichnet',
  'draw.pattern.label': 'Umriss in voller Größe: {piece}.',
  'paper.pattern.title': 'Schnittmuster in voller Größe',
  'paper.pattern.squares': 'Zwei Quadrate zur Druckprobe.',
  'paper.pattern.square.metric': '100 mm mal 100 mm',
  'paper.pattern.square.inch': '4 in mal 4 in',
  'paper.pattern.foot': 'Schnittmuster {number} · {day} · {title} für {wearer}',
  'paper.pattern.how': 'So wird es zusammengesetzt',
  'paper.pattern.how.scale':
    'In voller Größe drucken: 100 %, „tatsächliche Größe“, nie „an Seite anpassen“. Vor dem Schneiden auf jedem Blatt beide Quadrate mit dem Lineal prüfen. Stimmt eines nicht, das Blatt nicht verwenden.',
  'paper.pattern.how.trim':
    'Jedes Blatt links und oben am dünnen Rahmen beschneiden. An die gestrichelte Linie des Nachbarblatts legen, sodass die Linien weiterlaufen, und kleben.',
  'paper.pattern.how.lines':
    'An der dicken Linie ausschneiden: Zugaben sind dabei. Die dünne Linie ist die fertige Kante. Die senkrechte Strichlinie ist die Mitte des Teils.',
  'paper.pattern.how.part':
    'Von einem großen Teil ist nur der Ausschnitt um die Rundung gezeichnet. Das Teil nach dem Zuschneideblatt anzeichnen, dann den Ausschnitt an Kanten und Mitte anlegen.',
  'paper.pattern.how.washed':
    'Es passt zu gewaschenem Stoff. Auf gewaschenem und gebügeltem Stoff anzeichnen.',
  'paper.pattern.map': 'Wie die Blätter liegen',
  'paper.pattern.map.label': 'Übersicht über {count} Blätter: {names}.',
  'paper.pattern.sheet': 'Blatt {name}: {pieces}.',
  'paper.pattern.parts': 'Was darauf ist',
  'paper.pattern.column.piece': 'Teil',
  'paper.pattern.column.what': 'Was gezeichnet ist',
  'paper.pattern.column.size': 'Breite × Höhe',
  'paper.pattern.whole': 'das ganze Teil',
  'paper.pattern.curve': 'der Ausschnitt um die Rundung',
  'refusal.pattern.none':
    'Jedes Teil dieses Stücks wird nach Maß angezeichnet: Auf dem Zuschneideblatt steht alles, was nötig ist.',
}
