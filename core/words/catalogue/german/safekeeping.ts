import type { safekeeping as english } from '../english/safekeeping.ts'
import type { Translated } from '../translated.ts'

/** Backups, and going back to one. */
export const safekeeping: Translated<typeof english> = {
  'safe.title': 'Sicherung',
  'safe.about':
    'Eine geprüfte Kopie des Buchs entsteht beim Öffnen des Programms und jede Stunde, die es offen ist; behalten wird eine für jede Stunde eines Tages, jeden Tag eines Monats und jeden Monat für immer. Die Kopien liegen im Ordner „backups“ neben dem Buch: diesen Ordner und „attachments“ ab und zu auf eine andere Platte kopieren.',
  'safe.make': 'Jetzt eine Kopie machen',
  'safe.made': 'Eine Kopie ist gemacht und geprüft.',
  'safe.none':
    'Es gibt noch keine Kopie: Die erste entsteht binnen einer Stunde nach dem Anfang, oder jetzt mit diesem Knopf.',
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
  'safe.why.before-moving': 'bevor es anderswohin kam',
  'safe.why.unsealed': 'aus einer versiegelten Kopie',
  'refusal.seal.notSent': 'Hier ist keine versiegelte Kopie. Zuerst die Datei wählen.',
  'safe.unseal': 'Eine versiegelte Kopie öffnen',
  'safe.unseal.about':
    'Die versiegelte Datei wählen. Was darin ist, kommt zu den Kopien unten, mit Papieren und Bildern; dann lässt sich zu ihr zurückgehen.',
  'safe.unseal.file': 'Die Datei wählen',
  'safe.unseal.chosen': 'Gewählt: {name}',
  'safe.unseal.keep': 'Öffnen',
  'safe.unseal.done': 'Die versiegelte Kopie ist offen. Sie steht in der Liste unten.',
  'safe.unseal.none': 'Zuerst eine Datei wählen.',
  'safe.percent': '{percent} %',
  'safe.move': 'Das Buch anderswohin legen',
  'safe.move.about':
    'Das Buch liegt in {folder}. Es kann in einen anderen Ordner oder auf eine andere Platte, mit Papieren, Bildern und Kopien. Alles wird dort geprüft; dann geht es von dort weiter. Was hier war, bleibt als Kopie.',
  'safe.move.folder': 'Der Ordner, in den es soll',
  'safe.move.keep': 'Dorthin legen',
  'safe.move.done': 'Das Buch liegt jetzt in {folder}.',
  'safe.place.inside': 'Ordner darin',
  'safe.place.into': 'in einen von {count} gehen',
  'safe.place.intoNone': 'es gibt keine',
  'safe.place.above': 'Einen Ordner höher',
  'safe.place.room': '{free} MB haben hier Platz.',
  'safe.place.shut': 'Hier kann nichts geschrieben werden. Einen anderen Ordner wählen.',
  'safe.care.network':
    'Dieser Ordner liegt in einem Netz. Bricht das Netz mitten im Schreiben ab, kann ein Buch Schaden nehmen, und zwei Rechner könnten zugleich schreiben. Eine eigene Platte ist sicherer; ins Netz gehören besser versiegelte Kopien.',
  'safe.care.copied':
    'Der Name dieses Ordners sieht aus, als kopierte ihn ein Programm auf andere Rechner. So ein Programm kann ein halbes Buch mitnehmen, ein altes zurückbringen oder anderen die Kunden zeigen. Ein anderer Ordner ist sicherer; hierher gehören besser versiegelte Kopien.',
  'refusal.place.noRoom':
    'In {folder} ist kein Platz dafür: {needed} MB werden gebraucht, {free} MB sind frei. Dort Platz schaffen oder einen anderen Ordner wählen. Nichts wurde geändert.',
  'refusal.place.noPath': 'Den ganzen Weg eines Ordners angeben, von der Spitze der Platte an.',
  'refusal.place.noFolder': 'Den Ordner {folder} gibt es nicht. Erst anlegen oder einen anderen wählen.',
  'refusal.place.shut': 'In den Ordner {folder} darf nicht hineingesehen werden. Einen anderen wählen.',
  'refusal.place.unwritable':
    'In {folder} kann nichts geschrieben werden. Einen anderen Ordner wählen. Nichts wurde geändert.',
  'refusal.place.same': 'In diesem Ordner liegt es schon. Einen anderen wählen.',
  'refusal.place.taken':
    'In {folder} liegt schon ein Buch. Einen anderen Ordner wählen oder jenes erst weglegen. Nichts wurde geändert.',
  'refusal.place.notWhole':
    'Die Kopie {file} ist nicht dasselbe wie das Kopierte. Vielleicht geht die Platte kaputt: eine andere wählen. Nichts wurde geändert.',
  'refusal.place.gone':
    'Das Buch kam nach {folder} und ist dort jetzt nicht. Die Platte anstecken oder die Verbindung dorthin herstellen und das Programm wieder öffnen. Kommt es nie wieder, die Datei {pointer} entfernen; dann beginnt das Programm mit dem, was hier blieb: Kopien liegen im Ordner „backups“.',
  'refusal.place.unreadable':
    'Die Datei {pointer}, die sagt, wo das Buch liegt, ist nicht zu lesen. Den ganzen Weg seines Ordners hineinschreiben, oder sie entfernen, wenn das Buch daneben liegt.',
  'refusal.store.left':
    'Das Buch wird gerade nach {folder} gelegt. Dies wurde nicht behalten: danach noch einmal tun.',
  'safe.forgotten': 'Seither vergessene Menschen, die noch darin sind: {count}',
  'safe.forget': 'Vergessene auch aus den Kopien nehmen',
  'safe.forget.about':
    'Frühere Kopien enthalten noch, wer seither vergessen wurde. Wer zu so einer Kopie zurückgeht, bekommt sie nicht wieder. Sie lassen sich auch aus den Kopien selbst nehmen; um versiegelte Kopien und mitgenommene Dateien muss man sich selbst kümmern.',
  'safe.forget.done': 'Kopien, aus denen Vergessene genommen wurden: {count}.',
}
