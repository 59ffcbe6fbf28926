import type { draft as english } from '../english/draft.ts'
import type { Translated } from '../translated.ts'

/** Whether a draft fits: its checks, what would mend them, cautions, and what cannot be drafted. */
export const draft: Translated<typeof english> = {
  'refusal.draft.allowance':
    'Eine Zugabe von {allowance} ist breiter als das Teil, zu dem sie gehört. Bitte kleiner wählen.',
  'refusal.draft.unknownConstruction': 'Einen Schnitt „{id}“ gibt es nicht. Es gibt: {known}.',
  'refusal.draft.unknownChoice': 'Bei diesem Schnitt gibt es „{id}“ nicht zu wählen, sondern: {known}.',
  'refusal.draft.choiceRange':
    '{choice} mit {given} geht nicht: Der Wert muss zwischen {least} und {most} liegen.',
  'refusal.draft.choiceValue': '{choice} kann nicht „{given}“ sein. Zur Wahl stehen: {allowed}.',
  'refusal.draft.choiceTwice':
    '{one} und {other} sagen dasselbe auf zwei Arten. Nur eines von beiden angeben.',
  'refusal.draft.missing': 'Für diesen Schnitt fehlt ein Maß: {measure}. Bitte nehmen und eintragen.',
  'refusal.draft.slopeInOne':
    'Ein Rumpf, der über die Schulter in einem Stück geschnitten ist, hat keine Schulternaht, die schräg sein könnte. Eine Schulternaht wählen oder keine Schräge.',
  'refusal.draft.neckTooWide':
    'Ein {width} breiter Ausschnitt lässt auf einer {panel} breiten Bahn keine Schulter übrig. Weniger Zugabe am Hals wählen.',
  'refusal.draft.shorterThanArmhole':
    'Mit {length} Länge würde die Tunika an ihren eigenen Armlöchern enden. Mindestens {least} lang machen oder Armloch oder Zwickel kleiner.',
  'refusal.draft.goreAboveGusset':
    'Die Keile würden {top} unter der Schulter beginnen, aber Armloch und Zwickel reichen bis {reach} hinab. Die Keile tiefer beginnen lassen oder Armloch oder Zwickel kleiner machen.',
  'refusal.draft.noRoomForGores':
    'Mit {length} Länge ist unter den Keilspitzen kein Platz für Keile. Die Tunika mindestens {least} lang machen oder die Keile höher beginnen lassen.',
  'refusal.draft.goresTooWide':
    'So breite Keile lägen fast quer zum Fadenlauf und würden schlecht fallen. Am breitesten geht {spread} je Keil, das ist eine Saumweite von {most}; mehr Keile geben mehr.',
  'refusal.draft.goresTooNarrow':
    'Die Keile wären zu schmal zum Nähen. Jeder braucht bei diesem Körper mindestens {spread}, das ist eine Saumweite von {least}.',
  'refusal.draft.sleeveTooShort':
    'Ein {length} langer Ärmel ist zu kurz für seinen Zwickel. Er braucht mindestens {least}; den Ärmel länger oder den Zwickel kleiner machen.',
  'refusal.draft.slitTooLong': 'Ein Halsschlitz von {slit} reicht zu weit hinab. Höchstens {most} gehen.',
  'refusal.draft.shoulderTooWide':
    '{shoulder} breite Schultern lassen dazwischen keinen Hals. Höchstens {most} gehen.',
  'refusal.draft.sleeveTooNarrow':
    'Ein {width} weiter Ärmel reicht nicht um Armloch und Bündchen. Er braucht mindestens {least}.',
  'refusal.draft.capeTooWide':
    'Ein Keil mit {spread} Saumweite läge fast quer zum Fadenlauf. Höchstens {most} gehen; ein längerer Kragen erlaubt mehr.',
  'refusal.draft.neckTooSmall':
    'So viel von einem Kreis lässt für diesen Körper kein Halsloch. Weniger vom Kreis nehmen.',
  'refusal.draft.ankleSlit':
    'Ein Schlitz von {slit} würde mehr als das halbe Bein öffnen. Höchstens {most} gehen.',
  'refusal.draft.noShoulder':
    'So tief ausgerundete Seiten lassen auf der Schulter keinen Stoff. Rundung oder Ausschnitt kleiner machen.',
  'refusal.draft.openingTooLong':
    'Eine Öffnung von {opening} ist länger als ihre Naht. Höchstens {most} gehen.',
  'refusal.draft.noTucks': 'Dieses Stück hat keine Länge, die Falten aufnehmen könnte.',
  'refusal.draft.noInlay': 'Dieses Stück hat keine Seitennähte zum Auslassen.',
  'refusal.draft.noNursing': 'Dieses Stück hat vorn keinen Platz für Stillschlitze.',
  'refusal.draft.noTrim': 'Eine der Kanten, die Besatz bekommen sollen, hat dieses Stück nicht.',
  'draft.fit.thigh': 'Oberschenkel',
  'draft.fit.seatDepth': 'Sitztiefe',
  'draft.fit.ties': 'Lang genug zum Binden',
  'draft.fit.goesOn': 'Geht über die Hüften',
  'draft.fit.chest': 'Brust',
  'draft.fit.waist': 'Taille',
  'draft.fit.hip': 'Hüfte',
  'draft.fit.seat': 'Sitzen',
  'draft.fit.biceps': 'Oberarm',
  'draft.fit.elbow': 'Gebeugter Ellbogen',
  'draft.fit.forearm': 'Unterarm',
  'draft.fit.hand': 'Hand durchs Bündchen',
  'draft.fit.head': 'Kopf durch den Ausschnitt',
  'draft.fit.neckStays': 'Ausschnitt bleibt auf den Schultern',
  'draft.fit.stride': 'Schrittweite',
  'draft.fit.floor': 'Saum frei vom Boden',
  'draft.fit.cuffCloses': 'Ärmelbündchen schließt',
  'draft.fit.collarCloses': 'Halsbündchen schließt',
  'draft.fit.covers': 'Reicht über den Kopf',
  'draft.fit.reaches': 'Reicht um Gesicht und Scheitel',
  'draft.fit.around': 'Um den Kopf',
  'draft.fit.depth': 'Tief genug',
  'draft.fit.shoulders': 'Kragen über die Schultern',
  'draft.fit.face': 'Platz fürs Gesicht',
  'draft.fit.cloakShoulders': 'Schließt vorn über den Schultern',
  'draft.fit.hoodAround': 'Kapuze um den Kopf',
  'draft.fit.knee': 'Knie',
  'draft.fit.calf': 'Wade',
  'draft.fit.heel': 'Ferse durch den Knöchel',
  'draft.fit.instep': 'Ferse und Spann',
  'draft.fit.ball': 'Fußballen',
  'draft.fit.goesOver': 'Geht über die Schultern',
  'draft.fit.strap': 'Träger über die Schultern',
  'draft.fit.supports': 'Eng genug, um die Brust zu tragen',
  'draft.mend.hipEase': 'Mehr Zugabe an der Hüfte geben.',
  'draft.mend.rise': 'Mehr Leibhöhe oder einen größeren Zwickel geben.',
  'draft.mend.drawersLength': 'Kürzere Beine wählen.',
  'draft.mend.side': 'Das Quadrat größer machen.',
  'draft.mend.tieLength': 'Die Bänder länger machen.',
  'draft.mend.skirtLength': 'Kürzer machen.',
  'draft.mend.opening': 'Die Öffnung länger machen.',
  'draft.mend.fullness': 'Mehr Stoff einkräuseln.',
  'draft.mend.chestEase': 'Mehr Zugabe an der Brust geben.',
  'draft.mend.armholeEase': 'Mehr Zugabe am Armloch geben.',
  'draft.mend.armholeOrWrist': 'Mehr Zugabe am Armloch oder mehr Weite am Handgelenk geben.',
  'draft.mend.wristWidth': 'Das Ärmelende weiter machen oder den Ärmel nicht verjüngen.',
  'draft.mend.slitLength': 'Den Halsschlitz verlängern oder mehr Zugabe am Hals geben.',
  'draft.mend.neckEase': 'Weniger Zugabe am Hals geben.',
  'draft.mend.sweep': 'Mehr Saumweite geben: breitere Keile oder mehr davon.',
  'draft.mend.length': 'Die Tunika kürzer machen.',
  'draft.mend.neckWidth': 'Die Breite des Ausschnitts ändern.',
  'draft.mend.goreWidth': 'Die Keile breiter machen.',
  'draft.mend.cuffOpening': 'Die Öffnung am Handgelenk länger machen.',
  'draft.mend.sideSlit': 'Die Seiten höher öffnen oder mehr Zugabe geben.',
  'draft.mend.armholeDepth': 'Das Armloch tiefer machen.',
  'draft.mend.cuffLength': 'Die Ärmelbündchen länger machen.',
  'draft.mend.collarLength': 'Den Kragen länger machen.',
  'draft.mend.backLength': 'Kürzer machen.',
  'draft.mend.veilLength': 'Den Schleier länger machen.',
  'draft.mend.wimpleLength': 'Das Kinntuch länger machen.',
  'draft.mend.coifWidth': 'Die Haube weiter machen.',
  'draft.mend.coifDepth': 'Die Haube tiefer machen.',
  'draft.mend.hoodWidth': 'Die Gugel vom Gesicht nach hinten tiefer machen.',
  'draft.mend.capeSpread': 'Die Schulterkeile breiter machen.',
  'draft.mend.faceOpening': 'Die Gesichtsöffnung größer machen.',
  'draft.mend.neckFit': 'Den Hals fälteln oder mehr vom Kreis nehmen.',
  'draft.mend.cloakLength': 'Den Mantel kürzer machen.',
  'draft.mend.takenIn': 'Weniger enger machen oder einen dehnbareren Stoff nehmen.',
  'draft.mend.ankleSlit': 'Den Schlitz am Knöchel länger machen.',
  'draft.mend.goreSpread': 'Die Keile breiter machen.',
  'draft.mend.strapLength': 'Die Träger länger machen.',
  'draft.mend.dressLength': 'Das Kleid kürzer machen.',
  'draft.mend.neckDepth': 'Die Tiefe des Ausschnitts ändern.',
  'draft.mend.bustEase': 'Die Zugabe an der Brust ändern.',
  'draft.mend.openingLength': 'Die Öffnung länger machen oder mehr Zugabe an der Hüfte geben.',
  'draft.mend.armEase': 'Mehr Zugabe am Oberarm geben.',
  'draft.caution.cordEnds':
    'Schnurenden an der Taille: für ein Kind kurz und nie dort, wo sie sich verfangen können. Örtliche Vorschriften und die geprüfte Praxis entscheiden.',
  'draft.caution.pieced':
    'Das Teil „{piece}“ ist breiter als dieser Stoff. Darum wird im geraden Fadenlauf ein Streifen angesetzt: {seam} Naht mehr. Mit etwas weniger Zugabe und breiteren Keilen geht es vielleicht ohne.',
  'draft.caution.cordsSmall':
    'Für ein kleines Kind: keine Schnur und kein Band an Kapuze, Hals oder Kopf und keines hinten; den Hals mit einem Knopf oder zugenähtem Schlitz schließen. EN 14682 und örtliche Vorschriften entscheiden.',
  'draft.caution.cordsChild':
    'Für ein Kind: keine freien Schnurenden an Kapuze oder Hals, anderswo kurze und keine unter dem Saum. EN 14682 und örtliche Vorschriften entscheiden.',
  'draft.caution.dust':
    'Alter oder ungewaschener Stoff staubt; lüften und auf Faser- und Farbstoffallergien achten.',
  'draft.caution.iron': 'Das Bügeleisen erst an einem Rest probieren und nie heiß allein lassen.',
  'draft.caution.blades': 'Finger hinter der Klinge halten und sie beim Weglegen schließen oder abdecken.',
  'draft.caution.pins': 'Nach Stecknadeln sehen, bevor das Stück über einen Kopf geht.',
  'draft.caution.needles': 'Näh- und Stecknadeln vorher und nachher zählen, bevor das Stück hinausgeht.',
  'draft.caution.armRoutes':
    'Der Arm, auf zwei Arten gemessen, weicht um {difference} ab. Fragen, wie der Arm gehalten wurde; der Ärmel richtet sich nach Schulter- und Armlänge.',
  'draft.caution.goreLowered':
    'Armloch und Zwickel reichen unter die Taille, darum beginnen die Keile {top} unter der Schulter.',
  'draft.caution.hemPuckers':
    'Ein {depth} tiefer Saum wirft an diesen Keilen Falten. Schmaler machen oder mit Beleg arbeiten.',
  'draft.caution.trailing':
    'Ein Saum so nah am Boden ist auf Treppen und am Feuer gefährlich. Das der Trägerin oder dem Träger sagen.',
  'draft.caution.flame':
    'Leinen, Baumwolle und Seide brennen schnell, Kunstfasern schmelzen auf der Haut: Ärmel und Säume von offener Flamme fernhalten. Örtliche Vorschriften und die geprüfte Praxis entscheiden.',
  'draft.caution.pinned':
    'Gesteckter Stoff: nie bei einem kleinen Kind, und die Nadeln vorher und nachher zählen.',
  'draft.caution.catches':
    'Ein langer Zipfel verfängt sich in Türen, Rädern und Maschinen und ist kein Spielzeug um einen Kinderhals. Das der Trägerin oder dem Träger sagen.',
  'draft.caution.frontGap':
    'Glatt angesetzt stehen die Vorderkanten an den Schultern {gap} auseinander. Der Mantel hängt offen.',
  'draft.caution.cloakTies':
    'Bänder am Kinderhals können strangulieren: eine Schließe nehmen, die nachgibt. EN 14682 und örtliche Vorschriften entscheiden.',
  'draft.caution.weakClosing':
    'Der Verschluss eines Mantels sollte nachgeben, wenn der Mantel hängen bleibt. So annähen, dass er es tut.',
  'draft.caution.testStrip':
    'Vor dem Zuschneiden einen schrägen Streifen vom Stoff schneiden und daran ziehen: Wie weit er nachgibt und zurückgeht, entscheidet, wie eng die Beine sein dürfen.',
  'draft.caution.toileFirst': 'Den guten Stoff erst zuschneiden, wenn ein Nesselmodell anprobiert ist.',
}
