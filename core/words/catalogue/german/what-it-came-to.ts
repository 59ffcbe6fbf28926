import type { whatItCameTo as english } from '../english/what-it-came-to.ts'
import type { Translated } from '../translated.ts'

/** Was übergebene Arbeit brachte: wo sie schlecht bezahlt war und warum, was wo zu ändern ist, und was noch offen ist. */
export const whatItCameTo: Translated<typeof english> = {
  'plan.why.asked':
    'Es lag am Preis: {under} unter der Untergrenze, weil {off} weniger verlangt als gerechnet war.',
  'plan.why.set': 'Es lag am Preis: {off} weniger verlangt als gerechnet.',
  'plan.why.rates':
    'Es lag an den Sätzen: Schon die Rechnung kam {under} unter die Untergrenze. Stunden oder Gewinn sind zu niedrig angesetzt.',
  'plan.why.ratesOld': 'Es lag an den Sätzen: Preis und Stunden kamen heraus wie gerechnet.',
  'plan.why.hours': 'Es lag an den Stunden: {more} mehr als gerechnet.',
  'plan.why.cloth': 'Der Stoff kostete {more} mehr als gerechnet.',
  'plan.why.target': 'Das Ziel ist gestiegen: {before} je Stunde beim Angebot, {target} jetzt.',
  'times.bad.title': 'Schlecht bezahlt',
  'times.bad.more': '{count} weitere brachten weniger als gewollt: Sie tragen unten ein ▾.',
  'times.bad.asked': 'Verlangter Preis',
  'times.bad.reckoned': 'Gerechneter Preis',
  'times.bad.floor': 'Untergrenze',
  'times.bad.hoursQuoted': 'Stunden gerechnet',
  'times.bad.hoursActual': 'Stunden gebraucht',
  'times.bad.floorAbout':
    'An der Untergrenze bringt eine Stunde in vier von fünf Fällen, was beim Angebot gewollt war; darunter weniger.',
  'times.bad.step': 'Am weitesten daneben: „{step}“, {actual} statt {quoted}.',
  'times.bad.noStep': 'Kein Schritt lag eine Viertelstunde oder mehr daneben.',
  'times.bad.to.asked': 'Zum Angebot',
  'times.bad.to.rates': 'Stundensätze ändern',
  'times.bad.to.hours': 'Zu seinen Zeiten',
  'times.bad.to.cloth': 'Stoffzuschlag ändern',
  'times.bad.to.target': 'Ziel je Stunde ändern',
  'times.advice.to.hours': 'Zu den eigenen Zeiten',
  'times.advice.one': 'Aus einem einzigen Stück, das kann Zufall sein.',
  'times.advice.several': 'Aus {count} Stücken.',
  'times.advice.nothing':
    'Für das Übergebene ist keine Zeit eingetragen. Sind die Zeiten der Schritte eingetragen, steht hier, was zu ändern ist.',
  'times.advice.little': 'Ein Stück sagt wenig: Mit jedem weiteren wird es sicherer.',
  'times.owed': 'Noch nicht bezahlt',
  'times.owed.about': '{owed} von diesen Preisen; oben ist es gezählt, als wäre es gekommen.',
  'times.table.on': 'Auf dem Tisch',
  'times.table.about':
    '{time} in dieser Zeit für Arbeit eingetragen, die noch nicht übergeben ist. Im Verdienst zählt das nicht.',
  'times.table.aboutAll':
    '{time} für Arbeit eingetragen, die noch nicht übergeben ist. Im Verdienst zählt das nicht.',
  'screen.more': 'und {count} weitere',
  'times.known.one': 'Ein Stück; seine Stunden sind eingetragen.',
  'times.known.onePart':
    'Ein Stück; seine Stunden sind nur teilweise eingetragen: Was fehlt, zählt wie angeboten.',
  'times.known.all': 'Die Stunden aller {garments} Stücke sind eingetragen.',
  'times.known.none':
    'Ein Stück; keine Zeit ist dafür eingetragen: Von Stunden und Verdienst lässt sich nichts sagen.',
  'times.asked.below': 'unter der Untergrenze',
  'times.cost.net': 'Preis vor Steuer',
  'times.cost.cloth': 'ab: Stoff',
  'times.cost.thread': 'ab: Garn',
  'times.cost.notion': 'ab: Zutaten',
  'times.cost.workroom': 'ab: Kosten der Werkstatt',
  'times.cost.left': 'Bleibt übrig',
  'times.cost.measured': 'Verbrauch an Stoff und Garn',
  'find.also.accounts':
    'lohnt gelohnt lohnen verdient verdienst gewinn einkommen ertrag geld stunden bezahlt schlecht monat abrechnung verlust wert',
  'find.also.books': 'rechnung rechnungen zahlungen steuer jahr steuerberater csv ohne',
  'guiding.find.clothMargin': 'Stoff, der über das Aufgelegte hinaus gekauft wird',
  'guiding.find.clothMargin.also':
    'stoffzuschlag zuschlag marge für stoff reserve verschnitt mehr kaufen einstellungen',
  'screen.settings.clothMargin': 'Stoffzuschlag, %',
  'screen.settings.clothMargin.help': 'Wird über das Aufgelegte und das Einlaufen hinaus gekauft.',
  'period.toAll': 'Die ganze Zeit zeigen',
  'screen.paidBy': '{what}, bezahlt von {payer}',
  'screen.commission.titlePaid': 'Auftrag {number} für {wearer}, bezahlt von {payer}',
  'books.open': 'Übergeben, noch ohne Rechnung',
  'books.open.makeFor': 'Rechnung schreiben: {number}',
  'money.column.kindHow': '{kind}, {how}',
}
