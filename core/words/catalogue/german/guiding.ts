import type { guiding as english } from '../english/guiding.ts'
import type { Translated } from '../translated.ts'

/** What leads on: from a figure to where it is set, and from an empty screen to the next act. */
export const guiding: Translated<typeof english> = {
  'guiding.rates': 'Der Preis ist aus Stundensätzen gemacht, die noch Anfangswerte sind.',
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
  'guiding.alone.profit': 'Gewinn zum verlangten Preis',
  'guiding.alone.together': 'Zusammen',
  'guiding.answer': 'Was der Kunde sagt',
  'guiding.printed': 'gedruckt am {day}',
  'guiding.look.close': 'Schließen',
  'guiding.lay.figures':
    'Zahlen an den Ecken sind {unit} ab der nahen Webkante / ab der Schnittkante; die Skala zählt {unit} ab der Schnittkante.',
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
  'guiding.find.papers': 'Was auf den Papieren steht',
  'guiding.find.papers.also':
    'name anschrift adresse e-mail telefon briefkopf bedingungen sprache region einheit zentimeter zoll papier nummern einstellungen',
  'guiding.find.money': 'Sätze: was eine Stunde kostet und bringen soll',
  'guiding.find.money.also':
    'lohn stundenlohn preis marge gewinn aufschlag steuer mwst anzahlung rate rundung währung geld einstellungen',
  'guiding.find.year': 'Was die Werkstatt im Jahr kostet',
  'guiding.find.year.also': 'gemeinkosten miete versicherung jährlich einstellungen',
  'guiding.find.threads': 'Garn, Fadenlänge und Stiche je Zentimeter',
  'guiding.find.threads.also': 'rolle strang gewachst doppelt stichdichte einstellungen',
  'guiding.find.notions': 'Was Zutaten kosten',
  'guiding.find.notions.also': 'knöpfe haken schnur band preis einstellungen',
  'guiding.find.mark': 'Das Zeichen der Werkstatt',
  'guiding.find.mark.also': 'logo bild',
  'guiding.find.people': 'Wer hier arbeitet, und an welchen Tagen',
  'guiding.find.people.also': 'stunden hilfe arbeitstage',
  'guiding.find.daysOff': 'Freie Tage und Feiertage',
  'guiding.find.daysOff.also':
    'urlaub ferien feiertag freier tag geschlossen weihnachten ostern einstellungen',
  'guiding.find.safekeeping': 'Sicherung: Kopien des Buchs',
  'guiding.find.safekeeping.also': 'backup wiederherstellen speichern versiegelt passwort umziehen ordner',
  'guiding.find.takeOut': 'Mitnehmen, was gespeichert ist, oder mitbringen',
  'guiding.find.takeOut.also': 'export archiv csv tabelle import',
  'guiding.find.lookRound': 'Das Beispiel ansehen, „Die erste Stunde“ drucken',
  'guiding.find.lookRound.also': 'muster demo rundgang anleitung tenter lane hilfe',
  'guiding.print':
    'Für neben die Tastatur: der Weg zum ersten Angebot, die Orte und die Tasten, auf einer Seite.',
}
