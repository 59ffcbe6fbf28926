import type { measure as english } from '../english/measure.ts'
import type { Translated } from '../translated.ts'

/** Body dimensions: their names and how each is taken. */
export const measure: Translated<typeof english> = {
  'refusal.measure.otherClient': 'Ein Maßsatz kann nur einen Maßsatz derselben Person ablösen.',
  'refusal.measure.unknown': '„{id}“ ist kein Maß, das hier bekannt ist. Bekannt sind: {known}.',
  'refusal.measure.range':
    '{measure} von {given}: So misst kein Körper, zu erwarten ist etwas zwischen {least} und {most}. Zahl und Einheit prüfen.',
  'refusal.measure.contradiction':
    '{smaller} ({small}) sollte kleiner sein als {larger} ({large}). Beide noch einmal messen.',
  'refusal.measure.child':
    'Die Verhältnisse Erwachsener sagen nichts über ein Kind. Was fehlt, muss gemessen werden.',
  'measure.doubt.range': '{measure}: {given} misst kein Körper. Zahl und Einheit prüfen.',
  'measure.doubt.contradiction':
    '{measure} ({given}) sollte kleiner sein als {other}. Beide noch einmal messen.',
  'measure.doubt.inches':
    '{measure}: {given} sieht nach Zoll aus, die als Zentimeter notiert sind. {rather} würde zu den anderen Maßen passen.',
  'measure.doubt.centimetres':
    '{measure}: {given} sieht nach Zentimetern aus, die als Zoll notiert sind. {rather} würde zu den anderen Maßen passen.',
  'measure.doubt.swapped':
    '{measure} ({given}) und {other} ({rather}) passen besser zu den anderen Maßen, wenn sie die Plätze tauschen.',
  'measure.doubt.digit':
    '{measure}: Nach den anderen Maßen wären {expected} ± {sd} zu erwarten, nicht {given}. Vielleicht ist eine Ziffer verrutscht: {rather} würde passen.',
  'measure.doubt.unlikely':
    '{measure}: Nach den anderen Maßen wären {expected} ± {sd} zu erwarten, nicht {given}. Noch einmal messen oder notieren, warum es so ist.',
  'measure.caveat.navel':
    'Die Reihenmessung nahm die Taille am Nabel, bei vielen Menschen tiefer als hier: Schätzung und Zweifel sind darum lockerer.',
  'measure.caveat.bentArm': 'Die Reihenmessung nahm es am gebeugten Arm, das ergibt mehr als am hängenden.',
  'measure.caveat.flexed':
    'Die Reihenmessung nahm es bei angespanntem Muskel: Die Schätzung fällt eher weit aus, und ihre Spanne ist größer.',
  'measure.caveat.level': 'Die Reihenmessung nahm es etwas tiefer, zwischen den Achselfalten.',
  'measure.survey':
    'Verglichen mit einer Reihenmessung von Soldatinnen und Soldaten der US Army (ANSUR II, 2012). Wirkliche Körper weichen davon ab: Was markiert ist, noch einmal messen, nicht einfach ändern.',
  'measure.name.stature': 'Körperhöhe',
  'measure.how.stature': 'Barfuß, Fersen zusammen, Rücken an der Wand: vom Scheitel bis zum Boden.',
  'measure.name.cervicalHeight': 'Höhe des Halswirbels',
  'measure.how.cervicalHeight':
    'Den Kopf senken und den Knochen suchen, der im Nacken am weitesten vorsteht; wieder geradeaus schauen und von dort senkrecht bis zum Boden messen.',
  'measure.name.headGirth': 'Kopfumfang',
  'measure.how.headGirth':
    'Um den Kopf über den Ohren und über die stärkste Stelle hinten, über dem Haar, wie es getragen wird.',
  'measure.name.neckGirth': 'Halsumfang',
  'measure.how.neckGirth':
    'Um den Hals gleich unter dem Kehlkopf, das Maßband waagerecht und nicht angezogen.',
  'measure.name.neckBaseGirth': 'Halsansatzumfang',
  'measure.how.neckBaseGirth':
    'Um den Ansatz des Halses: über den Nackenwirbel, die beiden Punkte, wo der Hals in die Schulter übergeht, und die Halsgrube vorn.',
  'measure.name.shoulderLength': 'Schulterlänge',
  'measure.how.shoulderLength':
    'Vom Punkt, wo der Hals in die Schulter übergeht, bis zum Ende des Schulterknochens.',
  'measure.name.bustGirth': 'Brustumfang',
  'measure.how.bustGirth':
    'Um die stärkste Stelle der Brust, ringsum waagerecht, über dem, was darunter getragen wird.',
  'measure.name.chestGirth': 'Oberbrustumfang',
  'measure.how.chestGirth': 'Um den Brustkorb dicht unter den Achseln, ringsum waagerecht, bei ruhigem Atem.',
  'measure.name.waistGirth': 'Taillenumfang',
  'measure.how.waistGirth':
    'In der Mitte zwischen unterster Rippe und Beckenkamm, waagerecht, nach dem Ausatmen.',
  'measure.name.hipGirth': 'Hüftumfang',
  'measure.how.hipGirth': 'Um die stärkste Stelle des Gesäßes, ringsum waagerecht, Füße zusammen.',
  'measure.name.backWaistLength': 'Rückenlänge',
  'measure.how.backWaistLength': 'Vom Nackenwirbel die Rückenmitte hinab bis zur Taille, am Körper entlang.',
  'measure.name.cervicalToWristLength': 'Rückenmitte bis Handgelenk',
  'measure.how.cervicalToWristLength':
    'Arm leicht gebeugt: vom Nackenwirbel über das Ende der Schulter und den Ellbogen bis zum Handgelenkknochen.',
  'measure.name.armLength': 'Armlänge',
  'measure.how.armLength':
    'Arm leicht gebeugt: vom Ende der Schulter über den Ellbogen bis zum Handgelenkknochen.',
  'measure.name.upperArmLength': 'Oberarmlänge',
  'measure.how.upperArmLength': 'Arm gebeugt: vom Ende der Schulter bis zur Spitze des Ellbogens.',
  'measure.name.upperArmGirth': 'Oberarmumfang',
  'measure.how.upperArmGirth':
    'Um die stärkste Stelle des hängenden Oberarms; für schwere Arbeit bei angespanntem Muskel.',
  'measure.name.elbowGirth': 'Ellbogenumfang',
  'measure.how.elbowGirth': 'Arm im rechten Winkel gebeugt: um Ellbogenspitze und Armbeuge.',
  'measure.name.forearmGirth': 'Unterarmumfang',
  'measure.how.forearmGirth': 'Um die stärkste Stelle des Unterarms, unterhalb des Ellbogens.',
  'measure.name.wristGirth': 'Handgelenkumfang',
  'measure.how.wristGirth': 'Um das Handgelenk über den Handgelenkknochen.',
  'measure.name.handGirth': 'Handumfang',
  'measure.how.handGirth': 'Flache Hand: um die Knöchel, ohne den Daumen.',
  'measure.name.waistHeight': 'Taillenhöhe',
  'measure.how.waistHeight': 'Von der Taille an der Seite senkrecht bis zum Boden.',
  'measure.name.hipHeight': 'Hüfthöhe',
  'measure.how.hipHeight': 'Von der Höhe der stärksten Stelle des Gesäßes senkrecht bis zum Boden.',
  'measure.name.insideLegHeight': 'Schritthöhe',
  'measure.how.insideLegHeight': 'Vom Schritt senkrecht bis zum Boden, ohne Schuhe.',
  'measure.name.kneeHeight': 'Kniehöhe',
  'measure.how.kneeHeight': 'Von der Mitte der Kniescheibe senkrecht bis zum Boden.',
  'measure.name.calfGirth': 'Wadenumfang',
  'measure.how.calfGirth': 'Um die stärkste Stelle der Wade, auf beiden Füßen stehend.',
  'measure.name.shoulderWidth': 'Schulterbreite',
  'measure.how.shoulderWidth':
    'Über den Rücken vom Ende des einen Schulterknochens zum Ende des anderen, über den Nackenwirbel.',
  'measure.name.backWidth': 'Rückenbreite',
  'measure.how.backWidth':
    'Arme hängen: über den Rücken von Armfalte zu Armfalte, auf halber Höhe des Armlochs.',
  'measure.name.chestWidth': 'Vorderbreite',
  'measure.how.chestWidth':
    'Arme hängen: über die Brust von Armfalte zu Armfalte, auf halber Höhe des Armlochs.',
  'measure.name.underbustGirth': 'Unterbrustumfang',
  'measure.how.underbustGirth': 'Um die Rippen dicht unter der Brust, ringsum waagerecht, bei ruhigem Atem.',
  'measure.name.bustPointWidth': 'Brustpunktabstand',
  'measure.how.bustPointWidth':
    'Von einem Brustpunkt zum anderen, gerade hinüber, so wie das Unterkleid sie trägt.',
  'measure.name.neckToBustPoint': 'Brusttiefe',
  'measure.how.neckToBustPoint':
    'Vom Punkt, wo der Hals in die Schulter übergeht, hinab zum Brustpunkt derselben Seite.',
  'measure.name.frontWaistLength': 'Vorderlänge',
  'measure.how.frontWaistLength':
    'Vom Punkt, wo der Hals in die Schulter übergeht, über den Brustpunkt hinab zur Taille.',
  'measure.name.waistToHip': 'Hüfttiefe',
  'measure.how.waistToHip':
    'An der Seite von der Taille über die Rundung der Hüfte bis zur Höhe der stärksten Stelle des Gesäßes.',
  'measure.name.trunkGirth': 'Rumpfumfang',
  'measure.how.trunkGirth':
    'Von der Mitte einer Schulter vorn hinab, durch den Schritt und hinten hinauf zum selben Punkt, nicht angezogen.',
  'measure.name.totalCrotchLength': 'Schrittlänge',
  'measure.how.totalCrotchLength':
    'Von der Taille vorn durch den Schritt bis zur Taille hinten, nicht angezogen. Das Band darf selbst gehalten werden.',
  'measure.name.armscyeGirth': 'Armlochumfang',
  'measure.how.armscyeGirth':
    'Arm hängt: vom Ende des Schulterknochens durch die Achsel und zurück, das Band locker.',
  'measure.name.handLength': 'Handlänge',
  'measure.how.handLength':
    'Flache Hand, Handfläche oben: von der ersten Falte am Handgelenk bis zur Spitze des Mittelfingers.',
  'measure.name.thighGirth': 'Oberschenkelumfang',
  'measure.how.thighGirth':
    'Um den Oberschenkel gleich unter der Gesäßfalte, waagerecht, auf beiden Füßen stehend.',
  'measure.name.kneeGirth': 'Knieumfang',
  'measure.how.kneeGirth': 'Um das Knie über die Mitte der Kniescheibe, Bein gestreckt.',
  'measure.name.ankleGirth': 'Fesselumfang',
  'measure.how.ankleGirth': 'Um das Bein gleich über den Knöcheln, wo es am dünnsten ist.',
  'measure.name.heelGirth': 'Fersenumfang',
  'measure.how.heelGirth':
    'Fuß flach: schräg von unter der Ferse über die Beuge des Spanns und zurück. Ein Beinling oder Stiefel muss darüber.',
  'measure.name.footLength': 'Fußlänge',
  'measure.how.footLength':
    'Im Stehen: vom hintersten Punkt der Ferse bis zur Spitze der längsten Zehe, am Boden entlang.',
  'measure.also.stature': 'Größe, Körpergröße, Höhe, wie groß',
  'measure.also.cervicalHeight': 'Nacken bis Boden, siebter Halswirbel',
  'measure.also.headGirth': 'Hutgröße, Kopfweite, um den Kopf',
  'measure.also.neckGirth': 'Kragenweite, Halsweite, um den Hals',
  'measure.also.neckBaseGirth': 'Halsansatz, Halsausschnitt, Halslochweite',
  'measure.also.shoulderLength': 'Schulternaht, Schulterbreite einfach, Hals bis Schulter',
  'measure.also.shoulderWidth': 'Schulter zu Schulter, über die Schultern, Passenbreite',
  'measure.also.backWidth': 'Rückenbreite, über den Rücken',
  'measure.also.chestWidth': 'Brustbreite, über die Brust vorn',
  'measure.also.bustGirth': 'Brust, Brustweite, Oberweite, um die Brust',
  'measure.also.chestGirth': 'Brustkorb, Oberbrust, Brustweite oben',
  'measure.also.underbustGirth': 'Unterbrust, Unterbrustweite, Rippen, Mieder',
  'measure.also.bustPointWidth': 'Brustabstand, Brustspitzen, Brustpunkte',
  'measure.also.neckToBustPoint': 'Brusthöhe, Schulter bis Brustpunkt',
  'measure.also.waistGirth': 'Taille, Taillenweite, um die Taille, Bund',
  'measure.also.hipGirth': 'Hüfte, Hüftweite, Gesäß, Gesäßweite',
  'measure.also.backWaistLength': 'Nacken bis Taille, Rückenlänge, Taillenlänge',
  'measure.also.frontWaistLength': 'vordere Länge, Schulter bis Taille, über die Brust',
  'measure.also.waistToHip': 'Hüfttiefe, Taille bis Hüfte',
  'measure.also.trunkGirth': 'Rumpfschlaufe, Rumpf, Körperumfang längs',
  'measure.also.totalCrotchLength': 'Schrittnaht, Leibhöhe, Taille durch den Schritt',
  'measure.also.cervicalToWristLength': 'Nacken bis Handgelenk, Ärmel ab Rückenmitte',
  'measure.also.armLength': 'Ärmellänge, Schulter bis Handgelenk, Ärmel',
  'measure.also.upperArmLength': 'Schulter bis Ellbogen',
  'measure.also.armscyeGirth': 'Armloch, Armlochweite, um das Armloch',
  'measure.also.upperArmGirth': 'Bizeps, Oberarm, Oberarmweite, um den Arm',
  'measure.also.elbowGirth': 'Ellbogen, um den Ellbogen',
  'measure.also.forearmGirth': 'Unterarm, Unterarmweite, unter dem Ellbogen',
  'measure.also.wristGirth': 'Handgelenk, Manschette, um das Handgelenk',
  'measure.also.handGirth': 'Knöchel, um die Hand, Faust, Handschuhgröße',
  'measure.also.handLength': 'Hand, Handgelenk bis Fingerspitze',
  'measure.also.waistHeight': 'Taille bis Boden, Seitenlänge, Rocklänge',
  'measure.also.hipHeight': 'Hüfte bis Boden, Gesäßhöhe',
  'measure.also.insideLegHeight': 'Schrittlänge innen, innere Beinlänge, Schritt bis Boden',
  'measure.also.kneeHeight': 'Knie bis Boden',
  'measure.also.thighGirth': 'Oberschenkel, Oberschenkelweite, um den Schenkel',
  'measure.also.kneeGirth': 'Knie, Knieweite, um das Knie',
  'measure.also.calfGirth': 'Wade, Wadenweite, Unterschenkel',
  'measure.also.ankleGirth': 'Fessel, Knöchel, um den Knöchel',
  'measure.also.heelGirth': 'Spann, Ferse und Spann, Einschlupf',
  'measure.also.footLength': 'Fuß, Schuhgröße, Sohle',
  'measure.stock.women': 'Lager, Frauen, Brust {chest}, {stature} groß',
  'measure.stock.men': 'Lager, Männer, Brust {chest}, {stature} groß',
  'measure.stock.all': 'Lager, Brust {chest}, {stature} groß',
  'measure.stock.note':
    'Eine Größe fürs Lager: Niemand wurde gemessen. Zahlen aus einer Reihenmessung; die Hälfte der Menschen dieser Größe liegt darunter.',
  'refusal.measure.stockRange': 'Eine Größe muss zwischen {least} und {most} liegen.',
}
