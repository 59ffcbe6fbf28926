import type { papers as english } from '../english/papers.ts'
import type { Translated } from '../translated.ts'

/** The ways to the papers, on the screens. */
export const papers: Translated<typeof english> = {
  'papers.more': 'Weitere Blätter',
  'papers.pattern.on': 'Schnittmuster gedruckt auf',
  'papers.on.A4': 'A4, zum Zusammenkleben',
  'papers.on.A3': 'A3, zum Zusammenkleben',
  'papers.on.Letter': 'Letter, zum Zusammenkleben',
  'papers.on.oneSheet': 'einem Bogen in eigener Größe',
  'papers.pattern.svg': 'Schnittmuster als Zeichnung (SVG)',
  'papers.look': 'Erst ansehen',
  'papers.look.workOrder': 'Das Arbeitsblatt erst ansehen',
  'papers.lookAt': 'Am Bildschirm ansehen',
  'papers.lookAt.cuttingSheet': 'das Zuschneideblatt',
  'papers.lookAt.pattern': 'das Schnittmuster in voller Größe',
  'papers.lookAt.careSheet': 'das Pflegeblatt',
  'papers.printed.workOrder': 'Arbeitsblatt gedruckt am {day}',
  'papers.stale':
    'Der Stoff wurde seither gemessen und neu gelegt: die gedruckten Blätter wegwerfen und neu drucken.',
  'papers.printed.cuttingSheet': 'Zuschneideblatt gedruckt am {day}',
  'papers.labels': 'Zettel für die Zuschnitte',
  'papers.print': 'Drucken',
  'papers.printOf': '{number} drucken',
  'papers.remind': 'Erinnerung schreiben',
  'mark.title': 'Das Zeichen der Werkstatt',
  'mark.about':
    'Es steht über dem Namen auf Angeboten, Rechnungen und Pflegeblättern. Angebote, die es schon gibt, behalten ihres.',
  'mark.none': 'Es gibt noch kein Zeichen.',
  'mark.choose': 'Bild wählen',
  'mark.remove': 'Wegnehmen',
  'mark.alt': 'Das Zeichen der Werkstatt',
  'mark.unreadable': '{name} ist kein lesbares Bild. Eine PNG-, JPEG- oder WebP-Datei nehmen.',
  'refusal.mark.png': 'Das ist kein PNG-Bild von höchstens {most} MB.',
}
