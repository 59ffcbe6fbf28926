import type { house as english } from '../english/house.ts'
import type { Translated } from '../translated.ts'

/** The store, requests and shells. */
export const house: Translated<typeof english> = {
  'refusal.workroom.notNew':
    'Die Musterwerkstatt kommt nur in ein neues Buch, damit sie sich nie mit echter Arbeit mischt. Dafür eine neue Datei öffnen.',
  'refusal.request.unknown': 'Eine Anfrage „{name}“ gibt es nicht. Die Liste der Anfragen gibt --list aus.',
  'refusal.request.unknownField': 'Ein solches Feld gibt es hier nicht: {fields}.',
  'refusal.request.type': 'Das Feld {field} fehlt oder ist von der falschen Art: erwartet wird {expected}.',
  'refusal.request.value': 'Das Feld {field} muss eines davon sein: {values}.',
  'refusal.request.kind': 'Das Feld {field} ist von einer Art, mit der sich hier nichts anfangen lässt.',
  'refusal.request.invalid': 'Das Feld {field} geht so nicht: {detail}.',
  'refusal.request.noBody': 'Die Maße eines Körpers angeben oder die Kennung eines Maßsatzes.',
  'refusal.request.noCloth': 'Einen Stoff angeben oder die Kennung eines gespeicherten.',
  'refusal.request.unreadable':
    'Diese Zeile ist keine Anfrage. Ein JSON-Objekt je Zeile schreiben: request und payload.',
  'ask.usage':
    'Aufruf: ask --store DATEI, mit einer Anfrage je Zeile auf der Standardeingabe; oder ask --list.',
  'ask.oldNode':
    'Nötig ist Node 22.18 oder neuer; hier läuft {version}. Über npm starten, das auf Linux x64 sein eigenes mitbringt.',
  'refusal.store.noFolder':
    'Den Ordner {folder} gibt es nicht. Erst anlegen oder einen anderen Platz für das Buch wählen.',
  'refusal.store.notAStore': '{path} ist ein Ordner und kein Buch. Eine Datei wählen.',
  'refusal.store.busy': 'Ein anderes Fenster oder Programm hat das Buch {path} offen. Erst dort schließen.',
  'refusal.store.damaged':
    '{path} ist beschädigt oder kein Buch dieses Programms. Nichts daran wurde verändert. Stattdessen eine Sicherung öffnen.',
  'refusal.store.newer':
    'Dieses Buch hat eine neuere Fassung des Programms geschrieben. Zum Öffnen das Programm erneuern; nichts wurde verändert.',
  'refusal.store.notFound': '{kind} mit der Kennung {id}: nicht im Buch.',
  'refusal.store.stale':
    'Das wurde inzwischen an anderer Stelle geändert. Vor dem Ändern noch einmal ansehen.',
  'refusal.store.setUsed':
    'Auf den Maßen vom {day} beruht ein Angebot; sie bleiben, wie sie sind. Einen neuen Maßsatz nehmen, der sie ablöst.',
  'refusal.store.attachmentMissing': 'Die Datei {path} fehlt. Aus einer Sicherung zurückholen.',
  'refusal.store.attachmentAltered':
    'Die Datei {path} ist nicht mehr, wie sie abgelegt wurde. Aus einer Sicherung zurückholen.',
  'refusal.client.otherName': 'Zur Sicherheit den Namen so eingeben, wie er im Buch steht: {name}.',
  'store.kind.client': 'Kunde',
  'store.kind.measurementSet': 'Maßsatz',
  'store.kind.cloth': 'Stoff',
  'store.kind.quote': 'Angebot',
  'store.kind.commission': 'Auftrag',
  'store.kind.garment': 'Stück',
  'store.kind.ownConstruction': 'eigener Schnitt',
  'store.kind.step': 'Schritt',
  'store.kind.document': 'Blatt',
  'store.kind.remnant': 'Rest',
  'store.kind.timeEntry': 'eingetragene Zeit',
  'store.kind.person': 'Person in der Werkstatt',
  'store.kind.absence': 'freie Zeit',
  'store.kind.note': 'Notiz',
  'store.kind.picture': 'Bild',
  'store.kind.fitting': 'Anprobe',
  'store.kind.stockLength': 'Stofflänge',
  'store.kind.payment': 'Zahlung',
  'store.kind.invoice': 'Rechnung',
  'refusal.shell.notOpen': 'Keine Werkstatt ist geöffnet. Erst eine öffnen.',
  'refusal.shell.gone':
    'Das Programm hat sein Buch geschlossen. Neu starten; was bestätigt wurde, ist sicher.',
  'refusal.shell.stopped': 'Angehalten wie gewünscht. Davon wurde nichts behalten.',
  'refusal.shell.fault':
    'Im Programm ist etwas schiefgegangen. Von diesem Schritt wurde nichts behalten; was vorher da war, ist sicher. Noch einmal versuchen und es den Machern melden, wenn es wiederkommt.',
  'refusal.shell.noViewer':
    'Hier gibt es kein Programm, das PDF-Dateien zeigt. Das Blatt liegt im Ordner der Anlagen.',
  'shell.cannotOpen': 'Die Werkstatt lässt sich nicht öffnen',
}
