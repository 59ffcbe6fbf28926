import type { start as english } from '../english/start.ts'
import type { Translated } from '../translated.ts'

/** The first hour: what is still to be done before a first quote, and the page to lie beside it. */
export const start: Translated<typeof english> = {
  'start.title': 'Die erste Stunde',
  'start.about':
    'Von der leeren Werkstatt bis zum ersten Angebot sind es keine fünf Minuten. Alles lässt sich später richtigstellen; ein abgeschicktes Angebot bleibt, wie es war.',
  'start.steps': 'Der Weg zum ersten Angebot',
  'start.column.number': '#',
  'start.column.what': 'Was',
  'start.column.how': 'Wie',
  'start.column.place': 'Ort',
  'start.column.for': 'Wofür',
  'start.step.name': 'Der Werkstatt einen Namen geben',
  'start.step.name.how':
    'Auf dem ersten Bild. In der Werkstatt sagen, an welchen Tagen gearbeitet wird und was auf den Papieren steht.',
  'start.step.client': 'Einen Kunden eintragen',
  'start.step.client.how': 'Kunden, Neuer Kunde. Ein Name genügt.',
  'start.step.measures': 'Maß nehmen',
  'start.step.measures.how':
    'Im Eintrag des Kunden. Eintippen, was das Maßband zeigt; was nach einem Versehen aussieht, wird gleich gezeigt. Was fehlt, lässt sich schätzen.',
  'start.step.cloth': 'Einen Stoff eintragen',
  'start.step.cloth.how': 'Stoffe: die Breite, wie er verkauft wird, und der Preis eines Meters.',
  'start.step.rates': 'Was eine Stunde bringen soll',
  'start.step.rates.how':
    'Werkstatt, Was die Arbeit kostet: die Sätze, und die Wochenstunden, aus denen Liefertage entstehen. Bis eigene dort stehen, entstehen Preise und Tage aus Anfangswerten.',
  'start.step.quote': 'Ein Stück anbieten',
  'start.step.quote.how':
    'Angebotstisch: für wen, welches Stück, aus welchem Stoff. Rechts stehen Preis, Stoff, Stunden und der Tag, der sich versprechen lässt; Als Angebot speichern und drucken.',
  'start.step.accept': 'Der Kunde sagt ja',
  'start.step.accept.how':
    'Auf dem Angebot: Der Kunde nimmt an. Dann ist es ein Auftrag: mit Arbeitsblatt, Zuschneideblatt, Schritten zum Abhaken und seinem Tag.',
  'start.places': 'Die Orte',
  'start.place.today': 'Was als Nächstes kommt, was spät ist, wer kommt, was eintrifft, wer anzurufen ist.',
  'start.place.desk': 'Was ein Stück braucht und kostet, und Angebote; eigene Stücke.',
  'start.place.clients': 'Wer bestellt und trägt, und die Maße.',
  'start.place.cloths': 'Stoffe zum Kaufen, Längen und Reste im Haus, die Einkaufsliste.',
  'start.place.commissions':
    'Angebote, Arbeit vom Ja bis zur Übergabe, die kommenden Wochen, Bücher, was herauskam.',
  'start.place.workroom': 'Was eine Stunde kostet, Arbeitstage, Papiere, eigene Zeiten, Kopien des Buchs.',
  'start.keys': 'Nützliche Tasten',
  'start.key.find': 'Strg K: alles finden, alles tun.',
  'start.key.print': 'Strg P: drucken, worum es auf dem Bild geht.',
  'start.key.undo': 'Strg Z: das Letzte zurücknehmen.',
  'start.key.help': '?: alle Tasten.',
  'start.safe': 'Was es sicher hält',
  'start.safe.copies': 'Das Buch wird jede Stunde von selbst kopiert; Werkstatt, Sicherung zeigt die Kopien.',
  'start.safe.away': 'Ab und zu eine versiegelte Kopie in ein anderes Haus bringen.',
  'start.safe.hands':
    'Auf Klingen, Nadeln, heiße Bügeleisen und Flammen achten. Das Programm erinnert daran; örtliche Vorschriften und Fachleute entscheiden.',
  'start.foot': 'Die erste Stunde, für {workroom}',
  'start.print': '„Die erste Stunde“ drucken',
  'start.todo': 'Der Weg zum ersten Angebot',
  'start.todo.about':
    'Kleine Schritte, in beliebiger Folge; die Liste verschwindet, wenn das erste Angebot gespeichert ist.',
  'start.todo.done': 'fertig',
  'start.todo.later': 'sobald Kundin, Maße und Stoff da sind',
  'start.todo.go.client': 'Einen Kunden eintragen',
  'start.todo.go.measures': 'Maß nehmen',
  'start.todo.go.cloth': 'Einen Stoff eintragen',
  'start.todo.go.rates': 'Sätze festlegen',
  'start.todo.go.quote': 'Zum Angebotstisch',
  'start.todo.go.name': 'Zur Werkstatt',
}
