import type { safekeeping as english } from '../english/safekeeping.ts'
import type { Translated } from '../translated.ts'

/** Backups, and going back to one. */
export const safekeeping: Translated<typeof english> = {
  'safe.title': 'Sicherung',
  'safe.about':
    'Eine geprüfte Kopie des Buchs entsteht beim Öffnen des Programms und jede Stunde, die es offen ist; behalten wird eine für jede Stunde eines Tages, jeden Tag eines Monats und jeden Monat für immer. Die Kopien liegen im Ordner „backups“ neben dem Buch: diesen Ordner und „attachments“ ab und zu auf eine andere Platte kopieren.',
  'safe.make': 'Jetzt eine Kopie machen',
  'safe.made': 'Eine Kopie ist gemacht und geprüft.',
  'safe.none': 'Es gibt noch keine Kopie.',
  'safe.when': '{day}, {time}',
  'safe.size': '{size} MB',
  'safe.why.start': 'beim Öffnen',
  'safe.why.hourly': 'stündlich',
  'safe.why.asked': 'auf Wunsch',
  'safe.why.before-restore': 'vor dem Zurückgehen zu einer anderen',
  'safe.why.before-update': 'vor einer Erneuerung',
  'safe.why.moved': 'als das Buch nicht mehr an seinem Platz war',
  'safe.look': 'Dahin zurückgehen',
  'safe.look.of': 'Zurückgehen zur Kopie von {when}',
  'safe.preview': 'Was das Zurückgehen ändern würde',
  'safe.column.what': 'Im Buch',
  'safe.column.here': 'Jetzt',
  'safe.column.there': 'In der Kopie',
  'safe.column.lost': 'Wäre weg',
  'safe.column.back': 'Käme zurück',
  'safe.what.client': 'Kunden',
  'safe.what.measurement_set': 'Maßsätze',
  'safe.what.quote': 'Angebote',
  'safe.what.commission': 'Aufträge',
  'safe.what.payment': 'Zahlungen',
  'safe.what.time_entry': 'eingetragene Zeiten',
  'safe.sure':
    'Das Buch, wie es jetzt ist, wird vorher kopiert, damit sich auch das rückgängig machen lässt. Wer vergessen wurde, bleibt vergessen.',
  'safe.restore': 'Zu dieser Kopie zurückgehen',
  'refusal.backup.none': 'Diese Kopie gibt es nicht mehr. Die Liste noch einmal ansehen.',
  'refusal.backup.damaged': 'Die Kopie {name} ist beschädigt und nicht zu gebrauchen. Eine andere nehmen.',
  'safe.seal': 'Eine Kopie zum Mitnehmen versiegeln',
  'safe.seal.about':
    'Eine Datei mit Buch, Blättern und Bildern, die nur die eigene Losung öffnet. Ohne sie kann niemand hinein: die Losung aufschreiben und anderswo aufbewahren.',
  'safe.seal.passphrase': 'Losung',
  'safe.seal.again': 'Die Losung noch einmal',
  'safe.seal.keep': 'Versiegeln',
  'safe.seal.done': 'Die versiegelte Kopie liegt unter {path}.',
  'safe.seal.differ': 'Die beiden sind nicht gleich. Die Losung noch einmal eingeben.',
  'refusal.seal.missing': 'Unter {path} liegt keine Datei.',
  'refusal.seal.short':
    'Eine Losung von mindestens {shortest} Zeichen nehmen: drei oder vier Wörter, die auch in zehn Jahren noch im Kopf sind.',
  'refusal.seal.other': 'Das ist keine versiegelte Kopie eines Buchs.',
  'refusal.seal.passphrase':
    'Die Losung öffnet sie nicht. Auf Groß- und Kleinschreibung und Leerzeichen achten.',
  'refusal.seal.damaged': 'Die versiegelte Kopie ist beschädigt oder abgeschnitten. Eine andere nehmen.',
  'refusal.seal.folder': 'In {folder} liegt schon etwas. Einen leeren Ordner wählen.',
}
