import type { selling as english } from '../english/selling.ts'
import type { Translated } from '../translated.ts'

/** What is asked for a garment, what that earns, and the other ways of making it. */
export const selling: Translated<typeof english> = {
  'selling.price': 'Eigener Preis vor Steuer',
  'selling.price.help': 'Leer: der gerechnete Preis.',
  'selling.earned':
    'Bei {price} bleiben {kept} für {time} Arbeit, Material und Werkstattkosten bezahlt: {earned} die Stunde.',
  'selling.lost':
    '{price} decken Material und Werkstattkosten nicht: Es fehlen {lacking}, und {time} Arbeit bringen nichts ein.',
  'selling.under.never': 'Es sind so gut wie sicher {target} oder mehr.',
  'selling.under.odds':
    'Dauert es länger als gerechnet, bringt die Stunde weniger: bei {odds} von 100 solchen Stücken weniger als die gewollten {target}.',
  'selling.under.always': 'Es ist so gut wie sicher weniger als die gewollten {target}.',
  'selling.floor': 'Um vier von fünf Mal {target} zu verdienen, mindestens {floor} verlangen.',
  'selling.floor.take': '{floor} verlangen',
  'selling.agreed': 'Was sonst vereinbart ist',
  'selling.rush': 'Eilzuschlag, %',
  'selling.discount': 'Nachlass, %',
  'selling.tax': 'Steuer auf dieses Stück, %',
  'selling.tax.help': 'Leer lassen für den üblichen Satz.',
  'selling.brought': 'So viel Stoff bringt der Kunde mit',
  'selling.brought.help': 'Leer lassen, wenn der Stoff von der Werkstatt ist.',
  'selling.brought.enough': 'Das reicht: {needed} werden gebraucht.',
  'selling.brought.short': 'Das reicht nicht: {needed} werden gebraucht, {length} sind da.',
  'selling.thread.hand': 'Garn für die Hand',
  'selling.thread.machine': 'Garn für die Maschine',
  'selling.thread.usual': '{thread}, das übliche',
  'selling.nameDay': 'Den versprochenen Tag aufs Angebot schreiben',
  'selling.shipping': 'Porto und Verpackung, vor Steuer',
  'selling.ways': 'Andere Ausführungen, nebeneinander',
  'selling.ways.other': 'Der andere Stoff',
  'selling.ways.asked': 'wie eingestellt',
  'selling.ways.offer': 'anbieten: {way}',
  'selling.ways.offered': 'angeboten: {count}',
  'selling.ways.about':
    'Immer nur eines geändert. Abhaken, was das Angebot zur Wahl stellen soll: Der Kunde sucht sich eines aus. Der Tag wird in vier von fünf Fällen gehalten, die laufende Arbeit zuerst.',
  'selling.ways.column.way': 'Ausführung',
  'selling.ways.column.cloth': 'Stoff',
  'selling.ways.column.hours': 'Stunden',
  'selling.ways.column.price': 'Preis',
  'selling.ways.column.earned': 'Eine Stunde bringt',
  'selling.ways.column.day': 'Fertig bis',
  'selling.ways.column.offer': 'Anbieten',
  'selling.doubts': 'Was diese Stunden unsicher macht',
  'selling.doubts.about':
    'Die Anteile an der Unsicherheit des Ganzen, der größte zuerst. Eingetragene Zeiten machen sie kleiner.',
  'selling.doubts.part': '{percent} %',
  'selling.around': 'rund ums Nähen: besprechen, einkaufen, Briefe, nachbessern',
  'selling.payments': '{amount} {when}',
  'selling.option.stands': 'wie angeboten',
  'selling.option.choose': 'Was der Kunde davon nimmt',
  'selling.shippingLine': 'Porto und Verpackung',
}
