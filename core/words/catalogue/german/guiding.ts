import type { guiding as english } from '../english/guiding.ts'
import type { Translated } from '../translated.ts'

/** What leads on: from a figure to where it is set, and from an empty screen to the next act. */
export const guiding: Translated<typeof english> = {
  'guiding.rates': 'Diese Sätze sind Anfangswerte.',
  'guiding.rates.set': 'Eigene festlegen',
  'guiding.address': 'Die eigene Anschrift fehlt noch und steht deshalb nicht auf dem Angebot.',
  'guiding.address.quoted':
    'Als dieses Angebot gespeichert wurde, fehlte die eigene Anschrift; sie steht deshalb nicht auf dem Papier.',
  'guiding.address.set': 'Eintragen',
  'guiding.address.next': 'Für die nächsten eintragen',
  'guiding.deposit': 'Wo die Anzahlung festgelegt wird',
  'guiding.begun': 'Geld in {currency}, Längen in {unit}, Druck auf {paper}; in der Werkstatt zu ändern.',
  'guiding.alone': 'Nur für die Werkstatt',
  'guiding.alone.about':
    'Womit beim Speichern dieses Angebots gerechnet wurde. Nichts davon steht auf dem Papier.',
  'guiding.alone.profit': 'Gewinn',
  'guiding.alone.together': 'Zusammen',
  'guiding.answer': 'Was der Kunde sagt',
  'guiding.printed': 'gedruckt am {day}',
  'guiding.look.close': 'Schließen',
  'guiding.lay.figures':
    'Zahlen an den Ecken sind Millimeter ab der nahen Webkante / ab der Schnittkante; die Skala zählt Millimeter ab der Schnittkante.',
  'guiding.print':
    'Für neben die Tastatur: der Weg zum ersten Angebot, die Orte und die Tasten, auf einer Seite.',
}
