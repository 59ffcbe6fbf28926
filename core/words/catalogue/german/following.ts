import type { following as english } from '../english/following.ts'
import type { Translated } from '../translated.ts'

/** Following the work: undoing a tick, what each garment waits for, what was taken off, and what was touched lately. */
export const following: Translated<typeof english> = {
  'refusal.plan.undone':
    'Einige dieser Schritte sind schon wieder offen, darum wurde nichts rückgängig gemacht. Die Schritte ansehen und den Haken wegnehmen, wo etwas nicht fertig ist.',
  'refusal.plan.undoSeveral':
    'Diese Schritte gehören zu mehreren Aufträgen. Einen Auftrag nach dem anderen rückgängig machen.',
  'tick.done': 'Abgehakt: {what}.',
  'tick.untimed':
    'Dafür ist keine Zeit erfasst: daneben aufschreiben, wie lange es gedauert hat, dann weiß es das nächste Angebot.',
  'tick.undone': 'Wieder offen: {what}.',
  'tick.undo': 'Rückgängig',
  'tick.undo.what': 'Rückgängig: {what}',
  'waits.title': 'Was als Nächstes kommt',
  'waits.next': '{step}',
  'waits.first': 'Wartet auf: {what}.',
  'waits.holds': 'Es wartet auf',
  'waits.go.money': 'Zum Geld',
  'waits.go.cloth': 'Zum Stoff dafür',
  'waits.go.cloths': 'Zu den Stoffen',
  'waits.go.fittings': 'Zu den Anproben',
  'waits.done': 'Alles ist fertig: übergeben.',
  'waits.deposit': 'den Kunden: von der Anzahlung fehlen {left}',
  'waits.coming': 'Stoff, unterwegs bis {day}',
  'waits.coming.noDay': 'Stoff, unterwegs, niemand hat gesagt, bis wann',
  'waits.unpromised': 'Stoff: eine Länge im Regal würde reichen, ist aber nicht zugesagt',
  'waits.unpromised.coming': 'Stoff: eine Länge, die unterwegs ist, würde reichen, ist aber nicht zugesagt',
  'waits.toBuy': 'Stoff: {length} sind zu kaufen',
  'waits.wash': 'Stoff, der noch zu waschen ist',
  'waits.measures': '{count} Maße, die nur geschätzt sind',
  'waits.measures.one': 'ein Maß, das nur geschätzt ist',
  'waits.fitting': 'die Anprobe am {day}',
  'waits.fittingNotBooked': 'eine Anprobe: kein Tag ist ausgemacht',
  'waits.fittingNotWritten': 'die Anprobe vom {day}: was sich ergab, ist nicht aufgeschrieben',
  'bin.title': 'Zuletzt weggenommen',
  'bin.about':
    'Notizen, Bilder, Anproben und eingetragene Zeiten, die in den letzten {days} Tagen weggenommen wurden. Danach verlassen sie diese Liste. Gelöscht wird nichts: Was weggenommen ist, bleibt unsichtbar im Buch, bis der Kunde vergessen wird.',
  'bin.none': 'In den letzten {days} Tagen wurde nichts weggenommen.',
  'bin.what': 'Was',
  'bin.of': 'Auftrag',
  'bin.when': 'Weggenommen',
  'bin.until': 'Steht hier bis',
  'bin.note': 'Notiz: {text}',
  'bin.picture': 'Bild: {name}',
  'bin.fitting': 'Anprobe vom {day}',
  'bin.time': '{time}, eingetragen am {day}',
  'bin.putBack': 'Zurücklegen',
  'bin.putBack.what': 'Zurücklegen: {what}',
  'bin.isBack': 'Wieder an seinem Platz: {what}.',
  'refusal.bin.there': 'Das ist schon an seinem Platz. Nichts wurde geändert.',
  'refusal.money.calledOff':
    'Auftrag {number} wurde abgesagt, also gibt es keine Rechnung über alles Vereinbarte. Was bleibt und was noch geschuldet ist, steht bei seinem Geld.',
  'refusal.timer.calledOff':
    'Die Uhr läuft für Auftrag {number}. Erst anhalten oder verwerfen, damit ihre Zeit nicht verloren geht.',
  'life.invoice.calledOff':
    'Der Auftrag wurde abgesagt, und Rechnung {number} fordert noch alles. Stornieren: Eine Stornorechnung nimmt sie zurück.',
  'recent.title': 'Zuletzt geändert',
  'screen.settings.keepDeposit':
    'Die Anzahlung behalten, wenn ein Auftrag nach dem Zuschneiden abgesagt wird',
  'screen.settings.keepDeposit.help':
    'Ob das erlaubt ist, bestimmt das örtliche Recht; nachsehen oder fragen. Es auch in die Bedingungen schreiben: Was auf einem Angebot nicht steht, hat der Kunde nicht vereinbart. Angebote, die es schon gibt, behalten, womit sie gemacht wurden.',
  'desk.agreed': 'Schon vereinbart: als Auftrag eintragen',
  'desk.agreed.about':
    'Für Arbeit, die schon zugesagt oder begonnen ist. Sie wird zu diesem Preis ein Auftrag, ohne auf Antwort zu warten; ein gleichlautendes Angebot liegt dabei.',
  'desk.agreed.keep': 'Zum Auftrag machen',
  'weeks.waiting': 'Was, wenn ein wartendes Angebot angenommen wird?',
  'weeks.waiting.each': 'Jedes ist für sich gerechnet, als würde es heute angenommen.',
  'weeks.waiting.one': '{customer}, {total}, gilt bis {day}',
  'weeks.waiting.takes': 'Es bräuchte {time} Arbeit.',
  'weeks.waiting.cloth': 'Heute bestellter Stoff ist am {day} da.',
  'weeks.waiting.change':
    'Es ändert schon angenommene Arbeit. Wird es angenommen, zählen diese Wochen es mit.',
}
