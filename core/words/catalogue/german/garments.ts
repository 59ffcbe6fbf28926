import type { garments as english } from '../english/garments.ts'
import type { Translated } from '../translated.ts'

/** The garments of the wardrobe: their names, when they were worn, and what is said of one that is drafted. */
export const garments: Translated<typeof english> = {
  'draft.describe.undertunic': 'Eine Tunika, {length} lang ab der Schulter und {chest} Brustweite.',
  'draft.describe.neck.keyhole': 'Schlüssellochausschnitt mit {slit} langem Schlitz, {finish}.',
  'draft.describe.neck.round': 'Runder Ausschnitt, {finish}.',
  'draft.describe.neck.boat': 'U-Boot-Ausschnitt, {finish}.',
  'draft.describe.neck.square': 'Eckiger Ausschnitt, {finish}.',
  'draft.describe.faced': 'mit Beleg aus demselben Stoff',
  'draft.describe.rolled': 'mit schmalem Rollsaum',
  'draft.describe.sleeves.tapered':
    'Ärmel {reach} ab Rückenmitte, am Ende auf {wrist} verjüngt, mit quadratischen Zwickeln unter den Armen.',
  'draft.describe.sleeves.straight':
    'Gerade Ärmel {reach} ab Rückenmitte, mit quadratischen Zwickeln unter den Armen.',
  'draft.describe.gores': 'Keile: {gores}; Saumweite {sweep}.',
  'draft.describe.drawers':
    'Eine Bruche, {length} lang ab der Taille, jedes Bein {leg} weit, mit Schnur in der Taille.',
  'draft.describe.kerchief': 'Ein Tuch, {side} im Quadrat, ringsum schmal gesäumt.',
  'draft.describe.apron':
    'Eine Schürze, {length} lang und {width} breit, in einen Bund mit Bändern gekräuselt.',
  'draft.describe.petticoat':
    'Ein Unterrock, {length} lang, aus {panels} geraden Bahnen, Saumweite {sweep}, in einen Bund mit Bändern gekräuselt.',
  'draft.describe.shift': 'Eine Chemise, {length} lang ab der Schulter, Saumweite {sweep}.',
  'draft.describe.shiftNeck.drawn': 'Weiter Ausschnitt, auf ein Band gezogen.',
  'draft.describe.shiftNeck.hemmed': 'Weiter Ausschnitt mit schmalem Saum.',
  'draft.describe.sleeveEnd.hemmed': 'Gerade Ärmel mit Zwickeln, {reach} ab Rückenmitte, gesäumt.',
  'draft.describe.sleeveEnd.banded':
    'Ärmel mit Zwickeln, {reach} ab Rückenmitte, in schmale Bündchen gekräuselt.',
  'draft.describe.smock': 'Ein Frauenhemd, {length} lang ab der Schulter, Saumweite {sweep}.',
  'draft.describe.smockNeck.high': 'Hoher Hals, in ein {band} langes Bündchen gekräuselt, mit Schlitz vorn.',
  'draft.describe.smockNeck.low':
    'Tiefer Ausschnitt, in ein {band} langes Bündchen gekräuselt, mit Schlitz vorn.',
  'draft.describe.smockCuffs':
    'Ärmel in Bündchen von {cuff} gekräuselt, mit quadratischen Zwickeln unter den Armen.',
  'draft.describe.shirt': 'Ein Hemd, hinten {length} lang und {chest} weit.',
  'draft.describe.shirtEnds':
    'Hals in einen Kragen von {collar} gekräuselt, Ärmel in Bündchen von {cuff}; verstärkt, wo es zieht.',
  'draft.describe.veil.rectangle': 'Ein Schleier, {length} lang und {depth} tief, ringsum schmal gesäumt.',
  'draft.describe.veil.halfCircle': 'Ein Halbkreis, {length} breit, ringsum schmal gesäumt.',
  'draft.describe.veil.circle': 'Ein Kreis, {length} breit, ringsum schmal gesäumt.',
  'draft.describe.wimple': 'Ein Kinntuch, {length} lang und {depth} tief, ringsum schmal gesäumt.',
  'draft.describe.coif': 'Eine Haube, {width} um den Kopf und {depth} tief, am Scheitel gekräuselt.',
  'draft.describe.lined': 'Ganz gefüttert.',
  'draft.describe.hood': 'Eine Gugel mit {cape} langem Kragen, {sweep} weit.',
  'draft.describe.hoodFront.closed': 'Vorn geschlossen, zum Überziehen.',
  'draft.describe.hoodFront.buttoned': 'Vorn geknöpft.',
  'draft.describe.tail': 'Ein {tail} langer Zipfel.',
  'draft.describe.cloak.half': 'Ein Halbkreismantel, {length} lang ab dem Hals, Saumweite {sweep}.',
  'draft.describe.cloak.threeQuarter':
    'Ein Dreiviertelkreismantel, {length} lang ab dem Hals, Saumweite {sweep}.',
  'draft.describe.cloak.full': 'Ein Vollkreismantel, {length} lang ab dem Hals, Saumweite {sweep}.',
  'draft.describe.cloakNeck.pleated': 'Am Hals in ein Bündchen gefältelt, sodass er vorn schließt.',
  'draft.describe.cloakNeck.plain': 'Am Hals glatt in ein Bündchen gesetzt.',
  'draft.describe.hooded': 'Mit Kapuze.',
  'draft.describe.hose': 'Ein Paar Beinlinge, schräg zum Fadenlauf geschnitten, {length} hoch ab dem Boden.',
  'draft.describe.hoseFoot.footed': 'Mit Füßlingen.',
  'draft.describe.hoseFoot.footless': 'Am Knöchel endend.',
  'draft.describe.points': 'Mit Nesteln gehalten: {points}.',
  'draft.describe.strapDress':
    'Ein Kleid, {length} lang ab der Achsel, Brustweite {chest}, Saumweite {sweep}.',
  'draft.describe.straps': 'Zwei Träger, hinten angenäht, mit Schlaufen vorn für Fibeln.',
  'draft.describe.sideless': 'Ein Überkleid, {length} lang ab der Schulter, Saumweite {sweep}.',
  'draft.describe.sides': 'Seiten ab der Schulter {opening} offen.',
  'draft.describe.kirtle':
    'Eine Cotte, {length} lang ab der Schulter, geschnürt {chest} Brustweite, Saumweite {sweep}.',
  'draft.describe.laced.front': 'Vorn auf {opening} mit einem Band in Spirale geschnürt.',
  'draft.describe.laced.side': 'An der linken Seite auf {opening} mit einem Band in Spirale geschnürt.',
  'draft.describe.kirtleSleeve.none': 'Ohne Ärmel.',
  'draft.describe.kirtleSleeve.elbow': 'Ärmel bis zum Ellbogen.',
  'draft.describe.kirtleSleeve.wrist': 'Verjüngte Ärmel bis zum Handgelenk.',
  'draft.describe.bodiceLined': 'Oberteil bis zur Hüfte gefüttert.',
  'draft.describe.forearmButtoned': 'Unterarme geknöpft.',
  'draft.describe.sideSlits': 'Seiten über dem Saum {slit} geschlitzt.',
  'draft.describe.alteration': 'Am mitgebrachten Stück.',
  'draft.describe.alteration.unpicked': '{length} aufgetrennt.',
  'draft.describe.alteration.seamsResewn': '{length} Nähte neu genäht.',
  'draft.describe.alteration.hemsResewn': '{length} Säume neu genäht.',
  'draft.describe.alteration.patches': 'Flicken: {count}.',
  'draft.describe.alteration.darns': 'Stopfstellen: {count}.',
  'draft.describe.alteration.buttonsSewn': 'Angenähte Knöpfe: {count}.',
  'draft.describe.alteration.eyeletsWorked': 'Gestochene Schnürlöcher: {count}.',
  'draft.construction.goredUndertunic': 'Untertunika mit Keilen',
  'draft.construction.drawers': 'Leinenbruche',
  'draft.construction.kerchief': 'Kopf- oder Halstuch',
  'draft.construction.apron': 'Schürze',
  'draft.construction.petticoat': 'gekräuselter Unterrock',
  'draft.construction.shift': 'Chemise',
  'draft.construction.smock': 'Frauenhemd mit Bündchen',
  'draft.construction.shirt': 'Männerhemd',
  'draft.construction.veil': 'Schleier',
  'draft.construction.wimple': 'Kinntuch',
  'draft.construction.coif': 'Haube',
  'draft.construction.hood': 'Gugel',
  'draft.construction.circleCloak': 'Kreismantel',
  'draft.construction.hose': 'Beinlinge',
  'draft.construction.strapDress': 'Trägerkleid',
  'draft.construction.sidelessOvergown': 'Surcot mit offenen Seiten',
  'draft.construction.lacedKirtle': 'geschnürte Cotte',
  'draft.construction.overtunic': 'Obertunika',
  'draft.construction.alteration': 'Änderung oder Ausbesserung',
  'draft.period.goredUndertunic': '11. bis 14. Jahrhundert und später, in weiten Teilen Europas',
  'draft.period.drawers': '12. bis 19. Jahrhundert',
  'draft.period.kerchief': 'fast alle Jahrhunderte, ganz Europa',
  'draft.period.apron': '15. bis 19. Jahrhundert',
  'draft.period.petticoat': '16. bis 19. Jahrhundert',
  'draft.period.shift': '18. und frühes 19. Jahrhundert',
  'draft.period.smock': '16. und frühes 17. Jahrhundert',
  'draft.period.shirt': '18. und frühes 19. Jahrhundert',
  'draft.period.veil': '10. bis 15. Jahrhundert',
  'draft.period.wimple': '12. bis 15. Jahrhundert',
  'draft.period.coif': '13. bis 17. Jahrhundert',
  'draft.period.hood': '13. bis 15. Jahrhundert',
  'draft.period.circleCloak': 'fast alle Jahrhunderte',
  'draft.period.hose': '12. bis 15. Jahrhundert',
  'draft.period.strapDress': '9. bis 11. Jahrhundert, im Norden',
  'draft.period.sidelessOvergown': '14. und 15. Jahrhundert',
  'draft.period.lacedKirtle': '14. und 15. Jahrhundert',
  'draft.period.overtunic': '11. bis 14. Jahrhundert und später, in weiten Teilen Europas',
  'draft.period.alteration': 'jede Zeit',
  'draft.summary.goredUndertunic':
    'Gerade Bahnen, verjüngte Ärmel, quadratische Zwickel unter den Armen und Keile ab der Taille. Unter Kleidern oder gegürtet als Kleid getragen; Obertuniken haben denselben Schnitt.',
  'draft.summary.drawers':
    'Zwei weite gerade Beine, dazwischen ein auf die Spitze gestelltes Quadrat, und eine Schnur durch den umgeschlagenen Bund.',
  'draft.summary.kerchief':
    'Ein Quadrat aus feinem Leinen, über Eck gefaltet, ums Haar gebunden oder um den Hals gelegt.',
  'draft.summary.apron': 'Eine gerade Bahn, in einen Bund mit Bändern gekräuselt.',
  'draft.summary.petticoat':
    'Gerade Bahnen, in einen Bund zum Binden gekräuselt, eine Naht oben offen. Unter einem Kleid oder selbst als Rock getragen.',
  'draft.summary.shift':
    'Leibwäsche in einer Länge über die Schulter, ausgestellt durch die Keile, die von den eigenen Seiten abgeschnitten sind, mit quadratischen Zwickeln und weitem Ausschnitt am Band.',
  'draft.summary.smock':
    'Gerader Rumpf mit gewendeten Keilen und quadratischen Zwickeln, Hals und Ärmel in Bündchen gekräuselt.',
  'draft.summary.shirt':
    'Neunzehn gerade Teile ohne Verschnitt: Rumpf in einer Länge, gekräuselte Ärmel, Kragen und Bündchen, Zwickel unter den Armen und neben dem Hals.',
  'draft.summary.veil':
    'Eine gesäumte Bahn, ein Halbkreis oder ein Kreis aus feinem Leinen oder Seide, übers Haar gesteckt.',
  'draft.summary.wimple':
    'Eine Bahn feines Leinen unter dem Kinn, die Enden unter einem Schleier am Scheitel festgesteckt.',
  'draft.summary.coif':
    'Eine enge Haube aus einem Stück, oben zugenäht, am Scheitel gekräuselt und im Nacken zusammengezogen.',
  'draft.summary.hood':
    'Zwei Seiten, über Scheitel und Rücken verbunden, über jeder Schulter ein Keil; vorn geschlossen oder geknöpft, mit oder ohne langen Zipfel.',
  'draft.summary.circleCloak':
    'Ein halber, Dreiviertel- oder ganzer Kreis, im geraden Fadenlauf zusammengesetzt, gefältelt oder glatt in ein Halsbündchen gefasst; auf Wunsch mit Kapuze oder Futter.',
  'draft.summary.hose':
    'Zwei Beine, schräg zum Fadenlauf geschnitten, damit sie anliegen, mit einer Naht hinten, mit oder ohne Füßling, von Nesteln gehalten.',
  'draft.summary.strapDress':
    'Ein Schlauch von der Achsel bis zum Saum, ab der Taille mit Keilen, an zwei Trägern, die vorn in Schlaufen enden. Über einem Hemd getragen.',
  'draft.summary.sidelessOvergown':
    'Vorder- und Rückenteil an schmalen Schultern, die Seiten bis zur Hüfte offen und darunter mit Keilen. Über einer Cotte getragen.',
  'draft.summary.lacedKirtle':
    'Ein enges Kleid aus vier geformten Bahnen, unten mit Keilen, vorn oder seitlich geschnürt; es trägt die Brust von allein. Immer mit Nesselmodell.',
  'draft.summary.overtunic':
    'Der Schnitt der Untertunika in Wolle, mit Platz für das, was darunter getragen wird; auf Wunsch gefüttert, mit geknöpften Unterarmen und Seitenschlitzen.',
  'draft.summary.alteration':
    'Arbeit an einem vorhandenen Stück: auftrennen, Nähte und Säume neu nähen, Flicken, Stopfen, Knöpfe und Schnürlöcher.',
  'draft.extra.tucks': 'Wachstumsfalten über dem Saum, zum Auslassen: {count} zu je {depth}.',
  'draft.extra.inlay': 'Seitennähte mit {inlay} Einschlag innen, zum Auslassen.',
  'draft.extra.nursing': 'Stillschlitze auf beiden Seiten.',
  'draft.extra.trim': 'Besatz entlang: {hem}.',
}
