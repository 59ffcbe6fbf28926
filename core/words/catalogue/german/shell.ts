import type { shell as english } from '../english/shell.ts'
import type { Translated } from '../translated.ts'

/** What the planner's own window says outside its page: menus, boxes, dialogs. */
export const shell: Translated<typeof english> = {
  'shell.menu.file': 'Datei',
  'shell.menu.edit': 'Bearbeiten',
  'shell.menu.go': 'Gehe zu',
  'shell.menu.view': 'Ansicht',
  'shell.menu.window': 'Fenster',
  'shell.menu.help': 'Hilfe',
  'shell.menu.newQuote': 'Neues Angebot',
  'shell.menu.savePaper': 'Kopie des zuletzt gezeigten Blatts speichern …',
  'shell.menu.bigger': 'Größer',
  'shell.menu.smaller': 'Kleiner',
  'shell.menu.usualSize': 'Übliche Größe',
  'shell.menu.licences': 'Lizenzen der Bestandteile',
  'shell.menu.log': 'Fehlerliste zeigen',
  'shell.fault.title': 'Im Programm ist etwas schiefgegangen',
  'shell.fault.said':
    'Was schon behalten war, ist sicher. Einfach weitermachen; wenn etwas seltsam aussieht, das Programm schließen und neu starten. Welcher Fehler es war, ohne Angaben über Kunden, steht in {file}.',
  'shell.page.title': 'Die Seite ist zusammengebrochen',
  'shell.page.again':
    'Die Seite des Programms ist zusammengebrochen und wurde wieder geöffnet. Was behalten war, ist da; was gerade getippt wurde, kann weg sein.',
  'shell.page.gone':
    'Die Seite des Programms ist mehrmals zusammengebrochen und bleibt jetzt zu. Was behalten war, ist sicher. Das Programm neu starten; wenn es wiederkommt, es den Machern melden und {file} mitschicken, darin steht nichts über Kunden.',
  'shell.page.stuck': 'Die Seite des Programms antwortet gerade nicht.',
  'shell.page.wait': 'Warten',
  'shell.page.reopen': 'Neu öffnen',
  'shell.gone.away':
    'Das Programm läuft nicht mehr. Neu starten; was gespeichert war, ist sicher. Was gerade getippt wurde, ist noch nicht gespeichert: diese Seite offen lassen und es von hier abschreiben, falls sich das Programm in einem anderen Fenster öffnet.',
  'shell.gone.other':
    'Das Programm wurde neu gestartet und kennt diese Seite nicht. Das Fenster nehmen, das es geöffnet hat. Was hier gerade getippt wurde, ist nicht gespeichert; von dieser Seite abschreiben.',
  'shell.gone.again': 'Noch einmal versuchen',
  'shell.folder.said':
    'Das Programm kann den Ordner für seine Dateien nicht anlegen. Nachsehen, ob die Platte voll oder schreibgeschützt ist, und neu starten.',
  'shell.save.title': 'Kopie speichern',
  'refusal.shell.notSaved':
    'Die Kopie ließ sich dort nicht speichern. Nachsehen, ob Platz ist und in den Ordner geschrieben werden darf, oder einen anderen nehmen.',
}
