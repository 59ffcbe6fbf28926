import type { stockAndMoney as english } from '../english/stock-and-money.ts'
import type { Translated } from '../translated.ts'

/** Cloth, thread and notions in stock, what is to be bought, and what is owed and paid. */
export const stockAndMoney: Translated<typeof english> = {
  'refusal.stock.notIn': 'Diese Länge ist noch nicht angekommen. Erst aufschreiben, wie lang sie ist.',
  'refusal.stock.alreadyIn':
    'Diese Länge ist schon da. Mehr vom selben Stoff ist eine eigene Länge, denn es ist ein anderes Stück.',
  'refusal.stock.width':
    'Kein Stoff ist {width} breit. Die Breite von Webkante zu Webkante angeben, höchstens 6 Meter.',
  'refusal.stock.notFree':
    '{asked} lassen sich nicht zusagen: Von dieser Länge sind nur {free} frei. Weniger nehmen oder eine andere Länge.',
  'refusal.stock.notReserved': 'Von dieser Länge ist diesem Stück nichts zugesagt.',
  'refusal.stock.releaseTooMuch':
    'Diesem Stück sind nur {reserved} zugesagt, also lassen sich {asked} nicht freigeben.',
  'refusal.stock.cutUnreserved':
    'Von dieser Länge ist diesem Stück nichts zugesagt. Erst zusagen, was geschnitten werden soll, dann schneiden.',
  'refusal.stock.cutTooMuch':
    'Diesem Stück sind nur {reserved} zugesagt, geschnitten werden sollen {asked}. Erst den Rest zusagen.',
  'refusal.stock.promised':
    'Es wären nur {found} übrig, zugesagt sind {reserved}. Erst sagen, welches Stück leer ausgeht, und seinen Stoff freigeben.',
  'refusal.stock.usedUp': 'Von dieser Länge ist nichts mehr da, was sich messen ließe.',
  'refusal.stock.staysWashed': 'Diese Länge ist gewaschen, und gewaschen bleibt sie.',
  'refusal.stock.notCut':
    'Von dieser Länge wurde für dieses Stück nichts geschnitten, also kann nichts zurückkommen.',
  'refusal.stock.offcutLong': 'Der Rest ist {asked} lang, geschnitten wurden für dieses Stück nur {cut}.',
  'refusal.stock.offcutWide': 'Der Rest ist {asked} breit, der Stoff war beim Schneiden {cut}.',
  'refusal.stock.offcutMuch': 'Diese Reste sind zusammen mehr Stoff, als für dieses Stück geschnitten wurde.',
  'refusal.stock.offcutTwice': 'Dieser Rest ist schon im Lager.',
  'refusal.stock.offcutsKept':
    'Reste dieses Stoffs liegen als eigene Längen im Lager, also wurde er geschnitten.',
  'refusal.stock.isHere':
    'Diese Länge ist schon da. Noch einmal zählen, wenn sie nicht so lang ist wie gedacht.',
  'refusal.stock.square.warp':
    'Das Probequadrat hat keine Marken in Kettrichtung. Mindestens ein Paar vor und nach dem Waschen messen.',
  'refusal.stock.square.weft':
    'Das Probequadrat hat keine Marken quer zum Stoff. Mindestens ein Paar vor und nach dem Waschen messen.',
  'refusal.stock.square.absurd':
    'Von {before} auf {after}: So sehr ändert sich kein Stoff. Noch einmal messen.',
  'refusal.stock.small.amount':
    'Diese Menge kann nicht stimmen. Angeben, was kam, verbraucht wurde oder da ist.',
  'refusal.stock.small.whole': 'Was stückweise verkauft wird, zählt in ganzen Stücken.',
  'refusal.stock.small.none.reel':
    '{asked} m lassen sich nicht nehmen: Von diesem Garn sind nur {left} m da.',
  'refusal.stock.small.none.skein':
    '{asked} m lassen sich nicht nehmen: Von diesem Garn sind nur {left} m da.',
  'refusal.stock.small.none.piece': '{asked} lassen sich nicht nehmen: Davon sind nur {left} da.',
  'refusal.stock.small.none.metre': '{asked} mm lassen sich nicht nehmen: Davon sind nur {left} mm da.',
  'refusal.stock.leadDays': 'Die Tage bis zur Lieferung müssen eine ganze Zahl sein, null oder mehr.',
  'refusal.stock.step':
    'Das Geschäft muss das in irgendeiner Menge abgeben. Den Schritt angeben, etwa 10 cm, eine Rolle oder ein Stück.',
  'refusal.money.nothing': 'Eine Zahlung muss mehr als nichts sein.',
  'refusal.money.twice': 'Diese Zahlung ist schon aufgeschrieben.',
  'refusal.money.refund': '{asked} lassen sich nicht zurückgeben, bezahlt sind nur {paid}.',
  'refusal.money.schedule':
    'Die vereinbarten Zahlungen ergeben {sum}, der Gesamtbetrag ist {total}. Beides muss gleich sein.',
  'refusal.money.total': 'Ein Gesamtbetrag kann nicht weniger als nichts sein.',
  'refusal.money.number':
    '{number} ist nicht die nächste Nummer. Blätter sind lückenlos nummeriert, die nächste ist {due}.',
  'refusal.money.invoice.empty': 'Eine Rechnung braucht mindestens eine Zeile.',
  'refusal.money.invoice.name': 'Eine Rechnung nennt, wer verkauft und wer kauft. Den Namen angeben.',
  'refusal.money.invoice.text': 'Jede Zeile einer Rechnung sagt, wofür sie ist.',
  'refusal.money.invoice.quantity': 'Die Menge muss eine ganze Zahl sein, 1 oder mehr.',
  'refusal.money.invoice.rate': 'Ein Steuersatz muss zwischen 0 und 100 % liegen.',
  'refusal.money.noInvoice': 'Eine Rechnung {number} gibt es nicht.',
  'refusal.money.isCreditNote': '{number} ist eine Stornorechnung. Nur eine Rechnung lässt sich stornieren.',
  'refusal.money.cancelled': 'Rechnung {number} ist schon storniert, durch {by}.',
  'refusal.money.noPayment': 'Eine solche Zahlung, für die es eine Quittung gäbe, ist nicht da.',
  'stock.offer.short': 'zu kurz: {free} sind frei, {needed} werden gebraucht',
  'stock.offer.narrow': 'zu schmal: gewaschen {width} breit, der Zuschneideplan ist für {needed}',
  'stock.square.grows.warp':
    'In Kettrichtung wurde dieser Stoff um {percent} % länger. Gekauft wird, als bliebe er gleich lang.',
  'stock.square.grows.weft':
    'Quer wurde dieser Stoff um {percent} % breiter. Aufgelegt wird, als bliebe er gleich breit.',
  'stock.square.near':
    'Manche Marken liegen weniger als {apart} auseinander. ISO 3759 verlangt so viel, weil ein Versehen mit dem Maßband dann weniger ausmacht.',
  'stock.soldBy.reel': 'rollenweise',
  'stock.soldBy.skein': 'strangweise',
  'stock.soldBy.piece': 'stückweise',
  'stock.soldBy.metre': 'meterweise',
  'money.method.cash': 'bar',
  'money.method.transfer': 'Überweisung',
  'money.method.card': 'Karte',
  'money.method.cheque': 'Scheck',
  'money.method.other': 'anders',
  'money.kind.invoice': 'Rechnung',
  'money.kind.creditNote': 'Stornorechnung',
  'money.kind.receipt': 'Zahlung',
  'money.kind.refund': 'Rückzahlung',
  'money.lacks.sellerAddress': 'Die eigene Adresse steht nicht darauf. In den Einstellungen angeben.',
  'money.lacks.customerAddress': 'Die Adresse des Kunden steht nicht darauf.',
  'money.lacks.taxNumber':
    'Steuer wird berechnet, aber die eigene Steuernummer steht nicht darauf. In den Einstellungen angeben.',
  'money.column.day': 'Tag',
  'money.column.number': 'Nummer',
  'money.column.kind': 'Art',
  'money.column.customer': 'Kunde',
  'money.column.net': 'Vor Steuer',
  'money.column.tax': 'Steuer {percent} %',
  'money.column.total': 'Gesamtbetrag',
  'money.column.paid': 'Bezahlt',
  'money.column.method': 'Wie',
  'money.column.currency': 'Währung',
}
