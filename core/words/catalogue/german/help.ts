import type { help as english } from '../english/help.ts'
import type { Translated } from '../translated.ts'

/** Help next to the thing: what a word of the trade means and why it matters, and what to mind when a measure is taken. */
export const help: Translated<typeof english> = {
  'help.about': 'Was ist das: {what}',
  'help.close': 'Schließen',
  'help.source': 'Quelle: {source}',
  'help.source.iso8559': 'benannt wie in ISO 8559-1:2017; wie gemessen wird, steht hier in eigenen Worten.',
  'help.source.workwoman': 'The Workwoman’s Guide, 1838.',
  'help.source.dillmont': 'Thérèse de Dillmont, Encyclopädie der weiblichen Handarbeiten.',
  'help.draws.measure': 'Wo das Maßband liegt: {what}',
  'help.draws.word': 'Eine Skizze: {what}',
  'help.gusset': 'Zwickel',
  'help.gusset.what':
    'Ein Quadrat, das unter dem Arm zwischen Ärmel und Rumpf eingesetzt ist und beim Tragen über seine Diagonale gefaltet liegt.',
  'help.gusset.why':
    'Flach gelegt gibt es dem Arm um seine Diagonale mehr Raum: der Arm hebt sich, ohne dass das Gewand mitgeht.',
  'help.gore': 'Keil',
  'help.gore.what':
    'Ein langer Keil in einer Naht oder einem Schlitz, die Spitze oben, der den Rock zum Saum hin weitet.',
  'help.gore.why':
    'Seine schräge Kante gibt nach, die gerade nicht: schräg an gerade genäht hängt die Naht ruhig.',
  'help.godet': 'Godet',
  'help.godet.what':
    'Ein kurzer, breiter Keil in einem Schlitz am Saum, wo der lange Keil viel höher begänne.',
  'help.godet.why': 'Er gibt ganz unten Raum für den Schritt und fällt in Falten.',
  'help.keyhole': 'Schlüssellochausschnitt',
  'help.keyhole.what': 'Ein kleines Rund für den Hals mit einem Schlitz nach vorn hinunter.',
  'help.keyhole.why':
    'Das Rund liegt nah am Hals, und durch den Schlitz kommt der Kopf: beide zusammen müssen mehr sein als der Kopf.',
  'help.facing': 'Beleg',
  'help.facing.what':
    'Ein Stück von der Form der Kante, rechts auf rechts angenäht, nach innen gewendet und angesäumt.',
  'help.facing.why':
    'Eine hohle Kante lässt sich nicht einschlagen, ohne sie einzuschneiden; der Beleg schließt sie ab und trägt den Zug.',
  'help.casing': 'Tunnel',
  'help.casing.what': 'Ein festgenähter Umschlag, in dem eine Schnur oder ein Band läuft.',
  'help.casing.why':
    'Die Schnur zieht die Weite am Körper ein, und doch geht das Stück über Kopf oder Hüfte.',
  'help.band': 'Bund',
  'help.band.what':
    'Ein gerader, in der Mitte gefalteter Streifen, der die gereihte oder gefaltete Kante zwischen seinen Hälften hat.',
  'help.band.why':
    'Er hält die Weite für immer auf einer Länge, und er ist es, der schließt: mit Knöpfen, Haken oder Bändern.',
  'help.gathers': 'Reihfalten',
  'help.gathers.what':
    'Eine längere Kante, auf zwei oder mehr Reihfäden zusammengezogen, bis sie so lang ist wie die Kante, an die sie kommt.',
  'help.gathers.why':
    'Die Fülle sagt, wie viele Längen Stoff in eine gehen. Eine alte Regel nimmt drei Fäden des Stoffs auf und übergeht vier.',
  'help.pleats': 'Legefalten',
  'help.pleats.what':
    'Falten, die vor dem Nähen gelegt werden. Von oben: Messerfalten alle in eine Richtung, Kellerfalten paarweise voneinander weg, Kartuschenfalten als runde Röhren, an ihren Kämmen angenäht.',
  'help.pleats.why':
    'Sie fassen auf weniger Raum mehr Stoff als Reihfalten und fallen bei jedem Tragen gleich.',
  'help.lining': 'Futter',
  'help.lining.what': 'Dieselben Formen noch einmal aus anderem Stoff, an den Kanten an das Stück gesäumt.',
  'help.lining.why':
    'Es trägt den Zug, deckt die Nähte und wärmt. Es hat einen eigenen Zuschneideplan und läuft nach eigenem Maß ein: beide vor dem Schneiden waschen.',
  'help.piecing': 'Anstückeln',
  'help.piecing.what':
    'Ein Streifen, der im geraden Fadenlauf an ein Teil kommt, das breiter ist als der Stoff.',
  'help.piecing.why': 'Es kostet eine Naht und spart einen breiteren Stoff. Alte Kleider haben das oft.',
  'help.grain': 'Fadenlauf und schräg',
  'help.grain.what':
    'Der Fadenlauf folgt der Webkante; schräg heißt quer dazu, wo der Stoff sich am meisten dehnt.',
  'help.grain.why':
    'Ein Teil hängt nach seinem Fadenlauf. Was schräg geschnitten ist, gibt nach und muss aushängen, bevor der Saum begradigt wird.',
  'help.ease': 'Zugabe',
  'help.ease.what': 'Was ein Gewand ringsum weiter ist als der Körper.',
  'help.ease.why':
    'Atmen, Sitzen und Armheben brauchen Raum, und was darunter getragen wird, auch. Ohne Öffnung muss das Stück außerdem angezogen werden können.',
  'help.seams': 'Arten von Nähten',
  'help.seams.what':
    'Offen: die Zugaben sind auseinandergebügelt. Gekappt: eine ist über die andere gelegt und festgenäht. Überwendlich: die rohen Kanten sind umnäht, unten.',
  'help.seams.why':
    'Eine Kappnaht hat keine rohe Kante, liegt flach und übersteht das Waschen; sie kostet eine zweite Reihe Stiche. Nähte, die niemand sieht, können mit der Maschine genäht werden.',
  'help.hems': 'Arten von Säumen',
  'help.hems.what':
    'Zweimal eingeschlagen, so dass die rohe Kante innen liegt; gerollt, bei feinem Stoff; mit einem Streifen belegt, unten, wo die Kante stark gebogen ist.',
  'help.hems.why':
    'Ein tiefer Saum wirft sich an einer Rundung. Bei Leinen ist der erste Einschlag schmal, höchstens 2 mm, und der zweite ebenso tief.',
  'help.tucks': 'Wachstumsfalten',
  'help.tucks.what': 'Falten über dem Saum, die Länge aufnehmen.',
  'help.tucks.why':
    'Aufgetrennt lassen sie das Stück herunter: für ein Kind, das wächst, oder für Stoff, der beim Waschen einläuft.',
  'help.inlay': 'Einschlag zum Auslassen',
  'help.inlay.what': 'Mehr Stoff jenseits der Naht, als das Nähen braucht.',
  'help.inlay.why': 'Die Naht lässt sich später auslassen. Durch dünnen Stoff scheint sie ein wenig.',
  'help.shrinkage': 'Einlaufen beim Waschen',
  'help.shrinkage.what':
    'Was Stoff bei der ersten Wäsche verliert, in der Länge und in der Breite, in Hundertsteln. Ein Meter, der um 6 % einläuft, gibt 94 cm.',
  'help.shrinkage.why':
    'Geschnitten wird aus gewaschenem Stoff, also wird mehr gekauft: 1 m gewaschen braucht 1,064 m. Ein Quadrat davon waschen, vorher und nachher messen und das Ergebnis aufschreiben.',
  'help.sweep': 'Saumweite',
  'help.sweep.what': 'Einmal um den Saum herum.',
  'help.sweep.why':
    'Sie muss reichen, um zu gehen und Treppen zu steigen. Keile geben sie, ohne die Schultern zu weiten.',
  'help.measure.stature': 'Andere Höhen werden daran geprüft: ein Fehler hier zeigt sich sonst nirgends.',
  'help.measure.cervicalHeight':
    'Was von den Schultern hängt, endet so weit über dem Boden, wie dies es sagt.',
  'help.measure.headGirth': 'Ein Ausschnitt ohne Öffnung, eine Kapuze und eine Haube müssen ihn durchlassen.',
  'help.measure.neckGirth': 'Ein Stehkragen schließt darauf; zwei Finger Luft sind Zugabe, nicht Maß.',
  'help.measure.neckBaseGirth':
    'Jeder Ausschnitt geht davon aus; eine um den Hals gelegte Kette zeigt, wo er läuft.',
  'help.measure.shoulderLength':
    'Das Ende des Knochens ertasten, während der Arm gehoben wird; es liegt weiter außen, als es aussieht.',
  'help.measure.shoulderWidth': 'Mit hängenden Armen: erhobene ziehen die Schultern zusammen.',
  'help.measure.backWidth': 'Die Arme einmal verschränken und dann hängen lassen, sonst wird es zu schmal.',
  'help.measure.chestWidth': 'Es gehört zur Rückenbreite: das Armloch ist, was dazwischen bleibt.',
  'help.measure.bustGirth': 'Ein Band, das hinten absinkt, liest zu viel: von der Seite hinsehen.',
  'help.measure.chestGirth':
    'Ohne Brust ist es der größte Umfang des Rumpfs, und eine Tunika wird danach gezeichnet; wo eine Brust ist, zählt deren Umfang.',
  'help.measure.underbustGirth': 'Er entscheidet, ob ein geschnürtes Gewand die Brust trägt.',
  'help.measure.bustPointWidth': 'Was darunter getragen wird, verschiebt die Punkte: darüber messen.',
  'help.measure.neckToBustPoint':
    'Es sinkt mit dem Alter und mit dem, was darunter ist; nie aus einer Tabelle nehmen.',
  'help.measure.waistGirth':
    'Zuerst ein Band um die Taille binden: jede Länge von der Taille beginnt dann an einer Stelle.',
  'help.measure.hipGirth': 'Auch über den Bauch, wenn er auf dieser Höhe weiter vorsteht.',
  'help.measure.backWaistLength':
    'Das gebundene Band zeigt sein Ende; ein runder Rücken macht es länger als vorn.',
  'help.measure.frontWaistLength': 'Abzüglich der Rückenlänge sagt sie, wie viel Form die Brust verlangt.',
  'help.measure.waistToHip':
    'Es folgt der Rundung und ist darum etwas mehr als der Unterschied der beiden Höhen.',
  'help.measure.trunkGirth':
    'Einteilige Kleidung kneift im Schritt, wenn er zu kurz ist: Zugabe zum Sitzen geben.',
  'help.measure.totalCrotchLength': 'So halten, wie die Taille getragen werden soll; Sitzen braucht mehr.',
  'help.measure.cervicalToWristLength':
    'Ein gebeugter Arm liest einige Zentimeter mehr als ein hängender: der Ärmel braucht sie.',
  'help.measure.armLength':
    'Gebeugt, denn ein nach dem hängenden Arm geschnittener Ärmel rutscht bei jedem Griff hoch.',
  'help.measure.upperArmLength': 'Es sagt, wo ein Ärmel weit genug für den gebeugten Ellbogen sein muss.',
  'help.measure.armscyeGirth': 'Er gehört dem Arm, nicht dem Gewand: ein altes Armloch ist tiefer.',
  'help.measure.upperArmGirth': 'Den stärkeren Arm messen; meist ist es der, mit dem geschrieben wird.',
  'help.measure.elbowGirth': 'Ein enger Ärmel muss ihn sich beugen lassen.',
  'help.measure.forearmGirth': 'Ein hochgeschobener Ärmel hält hier an.',
  'help.measure.wristGirth':
    'Ein Bündchen schließt darauf; was keine Öffnung hat, richtet sich nach der Hand.',
  'help.measure.handGirth':
    'Der Daumen bleibt draußen; ein Handgelenk ohne Öffnung braucht darum etwa 4 cm mehr.',
  'help.measure.handLength': 'Handschuhe und Fäustlinge richten sich danach.',
  'help.measure.waistHeight':
    'Mit den Schuhen, die getragen werden, ist es ein anderes Maß: aufschreiben, welches.',
  'help.measure.hipHeight': 'Sie sagt, auf welcher Höhe das Gewand am weitesten sein muss.',
  'help.measure.insideLegHeight':
    'Das Ende des Bandes hält die gemessene Person selbst; der Schritt wird daraus errechnet.',
  'help.measure.kneeHeight': 'Beinlinge werden danach geformt und Säume danach benannt.',
  'help.measure.thighGirth': 'Beide Beine, wenn eines stärker ist.',
  'help.measure.kneeGirth': 'Im Stehen; gebeugt ist es mehr, und enge Beinlinge müssen das zulassen.',
  'help.measure.calfGirth':
    'Die Mitte ist nicht die stärkste Stelle: das Band schieben, bis es am meisten zeigt.',
  'help.measure.ankleGirth':
    'Er ist viel weniger als die Ferse, die hindurch muss: ein enger Knöchel braucht einen Schlitz.',
  'help.measure.heelGirth': 'Etwa anderthalbmal der Knöchel.',
  'help.measure.footLength': 'Mit dem Gewicht darauf: im Stehen ist ein Fuß länger.',
}
