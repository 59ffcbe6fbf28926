import type { lengthsAndMoney as english } from '../english/lengths-and-money.ts'
import type { Translated } from '../translated.ts'

/** Lengths, days and money that cannot be read. */
export const lengthsAndMoney: Translated<typeof english> = {
  'refusal.length.empty': 'Hier fehlt eine Länge. Zum Beispiel 97,8 cm oder 38 1/2 in eingeben.',
  'refusal.length.unreadable':
    '„{text}“ lässt sich nicht als Länge lesen. So schreiben: 97,8 cm, 38 1/2 in oder 1 yd 4 nl.',
  'refusal.length.ambiguous':
    '„{text}“ lässt sich auf zwei Arten lesen. Ohne Tausenderpunkt und mit nur einem Komma oder einem Bruch schreiben.',
  'refusal.length.mixed': '„{text}“ mischt Zentimeter und Zoll. Bitte nur eines von beiden verwenden.',
  'refusal.length.order':
    '„{text}“ sollte die größere Einheit zuerst nennen und jede nur einmal, etwa 1 yd 4 nl.',
  'refusal.length.noUnit':
    'In „{text}“ hat eine Zahl keine Einheit. Jeder Zahl ihre Einheit geben, etwa 5 ft 6 in.',
  'refusal.length.negative': '„{text}“ ist weniger als nichts. Eine Länge muss größer als null sein.',
  'refusal.length.zero':
    'Mit der Länge null lässt sich nichts anfangen. Leer lassen, wenn sie nicht bekannt ist.',
  'refusal.length.absurd': '„{text}“ ist viel zu lang. Zahl und Einheit prüfen.',
  'refusal.date.unreadable':
    '„{text}“ steht in keinem Kalender. Den Tag als Jahr-Monat-Tag schreiben, etwa 2026-11-25.',
  'refusal.money.unreadable': '„{text}“ ist kein Betrag in ganzen Cent oder Rappen.',
  'refusal.money.currencies':
    'Beträge in {one} und {other} lassen sich nicht zusammenzählen. Die Werkstatt rechnet in einer Währung.',
  'refusal.money.noWeights': 'Ein Betrag lässt sich nicht teilen, wenn kein Teil etwas davon bekommt.',
  'refusal.time.unreadable': '„{text}“ lässt sich nicht als Zeit lesen. 90, 1:30 oder 1 h 30 schreiben.',
}
