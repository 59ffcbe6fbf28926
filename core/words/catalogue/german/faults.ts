import type { faults as english } from '../english/faults.ts'
import type { Translated } from '../translated.ts'

/** What the disk may do to the book, and what is left then. */
export const faults: Translated<typeof english> = {
  'refusal.store.missing':
    'Das Buch {path} ist nicht mehr an seinem Platz, obwohl es Kopien davon gibt. Nichts Neues wurde an seiner Stelle begonnen. Zu einer Kopie zurückgehen.',
  'refusal.store.moved':
    'Das Buch liegt nicht mehr unter {path}: Es wurde verschoben, umbenannt oder gelöscht, während das Programm es offen hatte. Das hier wurde nicht behalten. Alles davor liegt als Kopie im Ordner „backups“. Das Programm schließen, das Buch zurücklegen oder zu dieser Kopie zurückgehen und neu öffnen.',
  'refusal.store.movedAway':
    'Das Buch liegt nicht mehr unter {path}, und dort lässt sich keine Kopie schreiben: Ist die Platte noch angeschlossen? Das hier wurde nicht behalten. Wieder anschließen, dann das Programm schließen und neu öffnen.',
  'refusal.store.lookOnly':
    'Das Buch ist beschädigt, und was davon zu retten war, ist hier nur zum Ansehen. Erst wählen, womit es weitergeht.',
  'refusal.disk.full':
    'Die Platte ist voll, darum wurde das nicht behalten; das Buch ist wie zuvor. Platz schaffen und noch einmal versuchen.',
  'refusal.disk.readOnly':
    'Das Programm darf im Ordner des Buchs nicht schreiben, darum wurde nichts geändert. Es erlauben oder das Buch in einen eigenen Ordner legen.',
  'refusal.disk.failed':
    'Die Platte hat nicht getan, was sie sollte, darum wurde das nicht behalten. Auf dieser Platte nicht weiterarbeiten: den Ordner des Buchs auf eine andere kopieren und dort öffnen.',
  'refusal.disk.damaged':
    'Ein Teil des Buchs lässt sich nicht mehr lesen, darum ging das nicht. Das Programm schließen und neu öffnen: Es zeigt dann, was zu retten ist.',
  'refusal.damaged.nothing': 'Das Buch ist nicht beschädigt. Es gibt nichts zu flicken.',
  'refusal.damaged.noBackup':
    'Es gibt keine heile Kopie, zu der es zurückgehen könnte. Mit dem Geretteten weitermachen.',
  'refusal.damaged.nothingSaved': 'Vom Buch war nichts zu retten. Zu einer Kopie zurückgehen.',
  'damaged.title': 'Das Buch ist beschädigt',
  'damaged.missing.title': 'Das Buch fehlt',
  'damaged.about':
    'Ein Teil der Datei {path} lässt sich nicht mehr lesen. Eine kranke Platte, ein Stromausfall oder ein anderes Programm kann schuld sein. Das Programm hat nichts hineingeschrieben und wird es nicht tun: Was immer unten gewählt wird, sie bleibt neben dem Buch liegen, bis sie von Hand gelöscht wird.',
  'damaged.missing.about':
    'Unter {path} gibt es kein Buch mehr, obwohl es Kopien davon gibt. Vielleicht wurde es verschoben oder gelöscht: Wenn es sich findet, das Programm schließen, das Buch zurücklegen und das Programm wieder öffnen.',
  'damaged.copyFirst':
    'Wenn die Platte seltsame Geräusche macht oder es nicht das erste Mal ist: das Programm schließen und den ganzen Ordner auf eine andere Platte kopieren, bevor etwas gewählt wird.',
  'damaged.saved.title': 'Was zu retten war',
  'damaged.saved.all': 'Alle {saved} Einträge ließen sich lesen.',
  'damaged.saved.some': 'Gerettete Einträge: {saved}, verlorene: {lost}.',
  'damaged.saved.perhaps': 'Gerettete Einträge: {saved}. Wie viele verloren sind, lässt sich nicht zählen.',
  'damaged.saved.nothing': 'Nichts davon ließ sich lesen.',
  'damaged.saved.fromBackup':
    'Einträge, die sich nicht lesen ließen und so genommen wurden, wie sie in der neuesten Kopie stehen: {fromBackup}.',
  'damaged.saved.standIns':
    'Verlorene Kunden oder Maßsätze, die andere Einträge brauchen: {standIns}. Für jeden steht einer ohne Namen oder Maße da; aus den Papieren ergänzen.',
  'damaged.saved.apart':
    'Einträge, die sich lesen ließen, aber ohne das Verlorene nirgends hingehören: {apart}. Sie stehen Wort für Wort in der Datei {path}.',
  'damaged.saved.numbers':
    'Vor dem nächsten Angebot, der nächsten Rechnung oder Quittung die Nummer mit der letzten auf Papier vergleichen: Eine verlorene Nummer könnte noch einmal vergeben werden.',
  'damaged.parts': 'Was zu retten war, Teil für Teil',
  'damaged.column.part': 'Im Buch',
  'damaged.column.saved': 'Gerettet',
  'damaged.column.lost': 'Verloren',
  'damaged.lost.unknown': 'unbekannt',
  'damaged.part.clients': 'Kunden',
  'damaged.part.measures': 'Maße',
  'damaged.part.quotes': 'Angebote',
  'damaged.part.commissions': 'Aufträge und ihre Schritte',
  'damaged.part.money': 'Zahlungen und Rechnungen',
  'damaged.part.times': 'eingetragene Zeiten',
  'damaged.part.fittings': 'Anproben, Notizen und Bilder',
  'damaged.part.cloths': 'Stoffe, Längen und Reste',
  'damaged.part.own': 'eigene Schnitte',
  'damaged.part.papers': 'gedruckte Blätter',
  'damaged.part.settings': 'Einstellungen, Personen und Nummern',
  'damaged.part.history': 'Verlauf',
  'damaged.backup.title': 'Die neueste heile Kopie',
  'damaged.backup.when': 'Vom {day}, {time}. Was danach getan wurde, ist nicht darin.',
  'damaged.backup.none': 'Im Ordner „backups“ gibt es keine heile Kopie.',
  'damaged.backup.against': 'Die Kopie im Vergleich mit dem Geretteten',
  'damaged.column.what': 'Im Buch',
  'damaged.column.here': 'Gerettet',
  'damaged.column.there': 'In der Kopie',
  'damaged.column.onlyHere': 'Nur gerettet',
  'damaged.column.onlyThere': 'Nur in der Kopie',
  'damaged.look': 'Das Gerettete ansehen',
  'damaged.looking': 'Was vom beschädigten Buch zu retten war, nur zum Ansehen.',
  'damaged.back': 'Zurück zur Wahl',
  'damaged.goOn.saved': 'Mit dem Geretteten weitermachen',
  'damaged.goOn.backup': 'Zu dieser Kopie zurückgehen',
}
