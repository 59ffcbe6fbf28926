import type { stockRoom as english } from '../english/stock-room.ts'
import type { Translated } from '../translated.ts'

/** Lengths that are ordered and do not come, and remnants: where they lie, and what makes lengths of them. */
export const stockRoom: Translated<typeof english> = {
  'refusal.shopping.notListed':
    '{cloth} fehlt für keine offene Arbeit. Wer mehr bestellt, fügt auf der Seite der Stoffe eine Länge hinzu.',
  'refusal.shopping.before': 'Sie kann nicht kommen, bevor sie bestellt ist, am {day}. Den Tag berichtigen.',
  'refusal.remnant.noCloth':
    'Dieser Rest gehört zu keinem Stoff der Liste, also kann er bei keinen Längen liegen.',
  'refusal.remnant.inStock': 'Dieser Rest liegt jetzt bei den Längen seines Stoffs. Dort zählen.',
  'refusal.remnant.used': 'Dieser Rest gilt als aufgebraucht. Erst den Haken wegnehmen, wenn er noch da ist.',
  'life.stock.callOff': 'Sie kommt nicht',
  'life.stock.callOff.what':
    'Was sie versprochen hatte, steht wieder auf der Einkaufsliste, und die Länge wird nicht mehr erwartet.',
  'life.stock.callOffKeep': 'Herausnehmen',
  'remnant.at': 'Platz: {place}',
  'remnant.washed': 'gewaschen',
  'remnant.unwashed': 'nicht gewaschen',
  'remnant.place': 'Platz',
  'remnant.place.act': 'Anderswo hinlegen',
  'remnant.place.keep': 'Platz behalten',
  'remnant.toStock': 'Zu den Längen legen',
  'remnant.toStock.what':
    'Er wird oben eine eigene Länge, zum Zusagen, Zählen und Schneiden wie jede andere. Für Stücke angeboten wird nur einer, der über die ganze Stoffbreite geht.',
  'remnant.toStock.keep': 'Zu den Längen legen',
}
