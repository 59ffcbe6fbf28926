import type { care as english } from '../english/care.ts'
import type { Translated } from '../translated.ts'

/** The care sheet that goes with a garment, and the labels of its bundles. */
export const care: Translated<typeof english> = {
  'paper.care.title': 'Pflege',
  'paper.care.foot': 'Pflege {number} · {day} · {title} für {wearer}',
  'paper.care.made': 'Woraus es gemacht ist',
  'paper.care.cloth': '{name}: {fibre}',
  'paper.care.clothOnly': '{name}',
  'paper.care.role.lining': 'Futter: {cloth}',
  'paper.care.role.interlining': 'Einlage: {cloth}',
  'paper.care.role.facing': 'Belege: {cloth}',
  'paper.care.washing': 'Waschen, Schritt für Schritt',
  'paper.care.column.step': 'Schritt',
  'paper.care.column.symbol': 'Das Zeichen auf Etiketten',
  'paper.care.column.means': 'Was es hier heißt',
  'paper.care.step.wash': 'Waschen',
  'paper.care.step.bleach': 'Bleichen',
  'paper.care.step.dry': 'Trocknen',
  'paper.care.step.iron': 'Bügeln',
  'paper.care.step.clean': 'Reinigung',
  'paper.care.wash.hand30.sign': 'Waschbottich mit Hand',
  'paper.care.wash.hand30':
    'Von Hand, lauwarm (30 °C), mit milder Seife. Das Wasser ausdrücken, nicht reiben oder wringen.',
  'paper.care.wash.gentle30.sign': 'Waschbottich mit 30 und zwei Balken darunter',
  'paper.care.wash.gentle30': 'Schonwaschgang bei 30 °C, wenig schleudern.',
  'paper.care.wash.wash40.sign': 'Waschbottich mit 40',
  'paper.care.wash.wash40': 'Bei höchstens 40 °C waschen.',
  'paper.care.wash.wash60.sign': 'Waschbottich mit 60',
  'paper.care.wash.wash60':
    'Bei höchstens 60 °C waschen, farbigen Stoff bei 40 °C. Der Stoff wurde vor dem Zuschneiden gewaschen, er läuft also kaum noch ein.',
  'paper.care.bleach.sign': 'durchkreuztes Dreieck',
  'paper.care.bleach': 'Nie bleichen: Es zerfrisst den Faden, bevor der Stoff weiß wird.',
  'paper.care.dry.line.sign': 'Quadrat mit senkrechtem Strich; durchkreuzter Kreis im Quadrat',
  'paper.care.dry.line': 'In Form gezogen aufhängen. Kein Trockner: Handnähte ziehen sich darin zusammen.',
  'paper.care.dry.flat.sign': 'Quadrat mit waagerechtem Strich; durchkreuzter Kreis im Quadrat',
  'paper.care.dry.flat':
    'Flach auf einem Handtuch trocknen, fern von Hitze. Kein Trockner: Es filzt und läuft ein.',
  'paper.care.iron.one.sign': 'Bügeleisen mit einem Punkt',
  'paper.care.iron.one': 'Kühles Eisen, höchstens 110 °C, von links. Erst innen am Saum probieren.',
  'paper.care.iron.two.sign': 'Bügeleisen mit zwei Punkten',
  'paper.care.iron.two':
    'Warmes Eisen, höchstens 150 °C, durch ein feuchtes Tuch, gedrückt und abgehoben, nicht geschoben.',
  'paper.care.iron.three.sign': 'Bügeleisen mit drei Punkten',
  'paper.care.iron.three': 'Heißes Eisen, höchstens 200 °C, solange es noch feucht ist.',
  'paper.care.clean.sign': 'Kreis mit P',
  'paper.care.clean': 'Wenn eine Reinigung sein muss, dann eine, der dieses Blatt gezeigt wird.',
  'paper.care.first': 'Die ersten Wochen',
  'paper.care.first.press': 'Vor dem Tragen noch einmal bügeln: Nähte setzen sich beim zweiten Bügeln.',
  'paper.care.first.alone': 'Die ersten drei Male allein waschen: Gefärbter Stoff kann Farbe abgeben.',
  'paper.care.first.hem':
    'Ein Saum im schrägen Fadenlauf kann sich beim Tragen senken. Wiederbringen, dann wird er begradigt.',
  'paper.care.keep': 'Aufbewahren',
  'paper.care.keep.air':
    'Nach dem Tragen lüften; das meiste, was nach Schmutz aussieht, lässt sich trocken ausbürsten.',
  'paper.care.keep.moth':
    'Wolle und Seide sauber und mottensicher verschlossen aufbewahren, gefaltet statt gehängt.',
  'paper.care.keep.fold':
    'Trocken und gefaltet aufbewahren, nicht auf einem Bügel, der die Schultern verzieht.',
  'paper.care.keep.mend':
    'Früh ausbessern: Ein gelaufener Stich ist schnell gefangen, eine ganze Naht nicht.',
  'paper.care.safe': 'Sicher tragen',
  'paper.care.safe.trailing':
    'Der Saum reicht fast bis zum Boden: auf Treppen anheben und vom Feuer fernhalten.',
  'paper.care.safe.catches':
    'Der lange Zipfel verfängt sich in Türen, Rädern und Maschinen und ist kein Spielzeug um einen Kinderhals.',
  'paper.care.safe.cords':
    'Für ein Kind keine Schnur an Kapuze oder Hals anbringen und die Enden anderer kurz halten (EN 14682).',
  'paper.care.safe.closing':
    'Der Verschluss gibt nach, wenn der Mantel hängen bleibt. Nicht fester wieder annähen, als er war.',
  'paper.care.safe.pinned':
    'Wo gesteckt wird: nie bei einem kleinen Kind, und die Nadeln vorher und nachher zählen.',
  'paper.care.safe.fibre':
    'Auf der Haut liegt: {fibres}. Wenn es juckt oder die Haut rötet, ausziehen und ärztlichen Rat holen.',
  'paper.care.safe.iron':
    'Bügeleisen und Dampf verbrennen: Kinder fernhalten und ein heißes Eisen nie allein lassen.',
  'paper.care.safe.law':
    'Örtliche Vorschriften und wer von Amts wegen zuständig ist, gehen diesem Blatt vor.',
  'paper.care.fibre.linen': 'Leinen',
  'paper.care.fibre.cotton': 'Baumwolle',
  'paper.care.fibre.wool': 'Wolle',
  'paper.care.fibre.silk': 'Seide',
  'paper.care.fibre.other': 'dieser Stoff',
  'paper.care.unknown':
    'Welche Faser das ist, wurde nicht notiert; darum steht hier bei jedem Schritt das Schonendste. Ein Wassertropfen und ein warmes Eisen auf einem Rest verraten mehr.',
  'paper.label.grain': 'Fadenlauf',
  'paper.label.count': '× {count}',
  'paper.label.mirrored': '× {count}, davon {mirrored} gegengleich',
  'paper.label.foot': 'Zettel {number} · {day} · {house}',
}
