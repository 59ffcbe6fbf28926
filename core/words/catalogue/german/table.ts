import type { table as english } from '../english/table.ts'
import type { Translated } from '../translated.ts'

/** The cutting table: one step at a time, in large type. */
export const table: Translated<typeof english> = {
  'table.title': 'Am Zuschneidetisch',
  'table.open': 'Am Zuschneidetisch: {garment}',
  'table.leave': 'Zurück zu {number}',
  'table.place': 'Schritt {place} von {all}',
  'table.back': 'Zurück',
  'table.next': 'Weiter',
  'table.done': 'Fertig',
  'table.isDone': '✓ fertig',
  'table.reopen': 'Wieder öffnen',
  'table.start': 'Uhr starten',
  'table.stop': 'Uhr anhalten, {time}',
  'table.elsewhere': 'Die Uhr läuft für andere Arbeit: {step}, {number}.',
  'table.bar': 'Weitergehen',
  'table.keys': 'Mit Tasten: Pfeil rechts und links zum Weiter- und Zurückgehen, Leertaste für fertig.',
  'table.measure': 'Den Stoff neu messen',
  'table.measure.why':
    'Das Waschen hat ihm etwas genommen. Die Breite von Kante zu Kante, mit den Webkanten, und die Länge messen, dann wird auf das gelegt, was wirklich da ist; die folgenden Kreidezahlen richten sich danach.',
  'table.mark': 'Anzeichnen: {piece}',
  'table.mark.of': 'Teil {place} von {all}',
  'table.mark.role': 'Aus dem Stoff für {role}',
  'table.cut.size': 'Zuschnittmaß, quer × längs, {unit}',
  'table.finished.size': 'Fertig, quer × längs, {unit}',
  'table.alike':
    'Dieser Stoff hat keine rechte Seite, darum dürfen gespiegelte Teile gleich herum liegen: Eines davon wird zum Nähen gewendet.',
  'table.bias': 'Schräg geschnitten: die Maße sind die des gezeichneten Teils.',
  'table.chalk': 'Kreide, {unit}: ab der nahen Webkante / ab der Schnittkante',
  'table.chalk.copy': 'Nr. {number}',
  'table.chalk.copyName': 'Kreidezahlen von Nummer {number}, {piece}',
  'table.chalk.turned': 'um {angle}° gedreht',
  'table.chalk.faceDown': 'rechte Seite nach unten',
  'table.chalk.opening': 'Öffnung darin',
  'table.chalk.slit':
    'Schlitz, von der genähten Kante bis zur Spitze: erst schneiden, wenn er belegt oder gesäumt ist',
  'table.chalk.arc': 'dann eine Rundung durch {through}, Radius {radius}',
  'table.chalk.none': 'Dieses Teil liegt auf keinem eigenen Stoff.',
  'table.sewn': 'Was genäht wird, {unit}',
  'table.finish': 'Das war der letzte Schritt. An diesem Stück ist nichts mehr zu tun.',
  'table.nothing': 'Dieses Stück hat keine Schritte.',
}
