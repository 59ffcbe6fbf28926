import type { lay as english } from '../english/lay.ts'
import type { Translated } from '../translated.ts'

/** Cloth and layouts. */
export const lay: Translated<typeof english> = {
  'refusal.lay.width':
    'Diese Stoffbreite kann nicht stimmen. Die Breite angeben, in der er verkauft wird, mehr als nichts und bis 6 Meter.',
  'refusal.lay.selvedge':
    'Die Webkanten können nicht den ganzen Stoff ausmachen. Angeben, wie viel an jeder Seite wegfällt.',
  'refusal.lay.warpShrinkage':
    'Der Einlauf in der Länge muss zwischen nichts und der Hälfte liegen, etwa 0,05 für 5 %.',
  'refusal.lay.weftShrinkage':
    'Der Einlauf in der Breite muss zwischen nichts und der Hälfte liegen, etwa 0,03 für 3 %.',
  'refusal.lay.increment':
    'Das Geschäft muss den Stoff in irgendeinem Maß abgeben. Den Schritt angeben, etwa 10 cm.',
  'refusal.lay.thickness': 'Diese Stoffdicke kann nicht stimmen. Die Dicke einer Lage angeben, etwa 0,4 mm.',
  'refusal.lay.tooNarrow':
    'Das Teil „{piece}“ ist mit Zugaben {width} breit, der Stoff gewaschen und ohne Webkanten nur {usable}. Breiteren Stoff, weniger Zugabe oder mehr Keile wählen.',
  'refusal.lay.tooNarrowDoubled':
    'Das Teil „{piece}“ ist mit Zugaben {width} breit, der Stoff zur Hälfte gefaltet nur {usable}. In einer Lage auflegen.',
  'refusal.lay.lockedSingle':
    'Teile lassen sich nur festhalten, solange der Stoff in einer Lage liegt. Loslassen oder so auflegen.',
  'refusal.lay.lockedTurn':
    'Ein festgehaltenes Teil ist so gedreht, wie es auf diesem Stoff nicht liegen darf.',
  'refusal.lay.lockedOff': 'Ein festgehaltenes Teil liegt außerhalb des Stoffs. Verschieben oder loslassen.',
  'refusal.lay.stale':
    'Dieser Zuschneideplan gehört nicht mehr zu diesen Teilen auf diesem Stoff. Neu auflegen.',
  'refusal.lay.noPlaces': 'Für jedes Teil einen Platz angeben.',
  'lay.broken':
    'Die Suche nach einem kürzeren Zuschneideplan ist abgebrochen. Das hier ist der beste, den sie gefunden hatte; danach lässt sich zuschneiden.',
  'lay.fault.overlap': 'Zwei Teile liegen übereinander.',
  'lay.fault.offCloth': 'Ein Teil liegt außerhalb des Stoffs.',
  'lay.fault.angle': 'Ein Teil ist gegen Fadenlauf oder Strich gedreht.',
  'lay.fault.hand': 'Ein Teil liegt mit der falschen Seite nach oben.',
  'lay.fault.count': 'Ein Teil fehlt oder liegt zweimal da.',
  'lay.fault.flaw': 'Ein Teil liegt auf einem Webfehler.',
  'lay.fault.torn': 'Ein Teil liegt über einer Reißlinie.',
  'lay.fault.length': 'Die angegebene Länge ist nicht die der Teile.',
  'refusal.lay.napOverShoulder':
    'Das Teil „{piece}“ liegt über der Schulter, die Hälfte davon hinge also gegen den Strich dieses Stoffs. Eine Schulternaht wählen oder einen Stoff ohne Strich.',
  'lay.tight':
    'Dieser Plan braucht die ganze Breite: Der gewaschene Stoff muss überall {taken} zwischen den Webkanten breit sein. Ist er irgendwo schmaler, vor dem Zuschneiden neu auflegen.',
  'lay.stepLess': 'Wäre der Plan {less} kürzer, so wären {step} Stoff weniger zu kaufen: {saved}.',
  'lay.ofGarment': '{garment}: {piece}',
}
