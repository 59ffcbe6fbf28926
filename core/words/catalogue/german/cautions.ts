import type { cautions as english } from '../english/cautions.ts'
import type { Translated } from '../translated.ts'

/** What can hurt somebody, said the same wherever it is said: on screen, at the cutting table and on every paper. */
export const cautions: Translated<typeof english> = {
  'caution.title': 'Vorsicht',
  'caution.localRules': 'Örtliche Vorschriften und Fachleute entscheiden.',
  'caution.flame': '{burns} Ärmel und Säume von offener Flamme fernhalten.',
  'caution.burns.and': '{before} {next}',
  'caution.burns.linen': 'Leinen brennt schnell.',
  'caution.burns.cotton': 'Baumwolle brennt schnell.',
  'caution.burns.wool': 'Wolle fängt langsam Feuer, aber sie glimmt und brennt.',
  'caution.burns.silk': 'Dünne Seide brennt schnell.',
  'caution.burns.synthetic': 'Kunstfasern schmelzen auf der Haut.',
  'caution.burns.other': 'Stoff aus unbekannter Faser kann schnell brennen oder auf der Haut schmelzen.',
  'draft.caution.pinsInLine':
    'Jede Nadel aus der Linie nehmen, bevor die Klinge dort ankommt, und am Ende die Nadeln zählen.',
  'draft.caution.points':
    'Ahle und Trenner: von der haltenden Hand weg stoßen, und die Spitze danach bergen.',
  'draft.caution.cordEnds':
    'Schnurenden an der Taille: für ein Kind kurz und nie dort, wo sie sich verfangen können.',
  'draft.caution.pieced':
    'Das Teil „{piece}“ ist breiter als dieser Stoff. Darum wird im geraden Fadenlauf ein Streifen angesetzt: {seam} Naht mehr. Mit etwas weniger Zugabe und breiteren Keilen geht es vielleicht ohne.',
  'draft.caution.cordsSmall':
    'Für ein kleines Kind: keine Schnur und kein Band an Kapuze, Hals oder Kopf und keines hinten; den Hals mit einem Knopf oder zugenähtem Schlitz schließen (EN 14682).',
  'draft.caution.cordsChild':
    'Für ein Kind: keine freien Schnurenden an Kapuze oder Hals, anderswo kurze und keine unter dem Saum (EN 14682).',
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
    'Leinen, Baumwolle und Seide brennen schnell, Kunstfasern schmelzen auf der Haut: Ärmel und Säume von offener Flamme fernhalten.',
  'draft.caution.pinned':
    'Gesteckter Stoff: nie bei einem kleinen Kind, und die Nadeln vorher und nachher zählen.',
  'draft.caution.catches':
    'Ein langer Zipfel verfängt sich in Türen, Rädern und Maschinen und ist kein Spielzeug um einen Kinderhals. Das der Trägerin oder dem Träger sagen.',
  'draft.caution.frontGap':
    'Glatt angesetzt stehen die Vorderkanten an den Schultern {gap} auseinander. Der Mantel hängt offen.',
  'draft.caution.cloakTies':
    'Bänder am Kinderhals können strangulieren: eine Schließe nehmen, die nachgibt (EN 14682).',
  'draft.caution.weakClosing':
    'Der Verschluss eines Mantels sollte nachgeben, wenn der Mantel hängen bleibt. So annähen, dass er es tut.',
  'draft.caution.testStrip':
    'Vor dem Zuschneiden einen schrägen Streifen vom Stoff schneiden und daran ziehen: Wie weit er nachgibt und zurückgeht, entscheidet, wie eng die Beine sein dürfen.',
  'draft.caution.toileFirst': 'Den guten Stoff erst zuschneiden, wenn ein Nesselmodell anprobiert ist.',
}
