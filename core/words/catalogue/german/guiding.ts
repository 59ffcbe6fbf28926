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
  'guiding.new': 'Für alle, die neu hier sind',
  'guiding.look':
    'Oder Tenter Lane ansehen, mit erfundenen Kunden, Stoffen und Aufträgen, in einer eigenen Datei. Nichts Eigenes kommt dorthin; „Beispiel verlassen“ führt zurück.',
  'guiding.empty.cloths':
    'Noch steht kein Stoff im Buch. Oben den ersten eintragen: Name, Breite und Preis eines Meters genügen. Dann lässt sich ein Stück daraus anbieten.',
  'guiding.empty.quotes':
    'Noch gibt es keine Angebote. Am Angebotstisch wählen, für wen, welches Stück und welcher Stoff; was dort gespeichert wird, steht hier, zum Drucken und Beantworten.',
  'guiding.empty.toDesk': 'Zum Angebotstisch',
  'guiding.empty.commissions':
    'Es ist nichts in Arbeit. Nimmt ein Kunde ein Angebot an, wird es ein Auftrag und steht hier, mit Schritten, Papieren und seinem Tag.',
  'guiding.empty.toQuotes': 'Zu den Angeboten',
  'guiding.empty.plan':
    'Kein Auftrag ist offen. Ist ein Angebot angenommen, zeigen diese Wochen, wie voll sie sind und was wann fertig wird.',
  'guiding.empty.shopping':
    'Für die vereinbarte Arbeit ist nichts zu kaufen. Was ein angenommenes Angebot braucht und nicht im Haus ist, steht hier von selbst.',
  'guiding.empty.toCommissions': 'Zu den Aufträgen',
  'guiding.print':
    'Für neben die Tastatur: der Weg zum ersten Angebot, die Orte und die Tasten, auf einer Seite.',
}
