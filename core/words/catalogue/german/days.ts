import type { days as english } from '../english/days.ts'
import type { Translated } from '../translated.ts'

/** The days of the workroom: people, timers, notes, fittings, dates. */
export const days: Translated<typeof english> = {
  'refusal.timer.running':
    'Es läuft schon eine Uhr, für Auftrag {number}. Erst anhalten oder sagen, was in der Zeit getan wurde.',
  'refusal.timer.none': 'Es läuft keine Uhr.',
  'refusal.person.last':
    'Jemand muss hier arbeiten. Erst eine andere Person eintragen, dann diese herausnehmen.',
  'refusal.absence.order': 'Der letzte freie Tag liegt vor dem ersten. Die Tage andersherum eintragen.',
  'refusal.picture.kind':
    '{name} ist kein Bild, das sich behalten lässt. Eine PNG-, JPEG- oder WebP-Datei nehmen.',
  'refusal.picture.size': '{name} ist zu groß: {size} MB, höchstens {most} MB gehen. Erst verkleinern.',
  'refusal.fitting.held':
    'Diese Anprobe hat stattgefunden; was sich ergab, lässt sich ändern, aber nicht verschieben.',
  'refusal.plan.noPiece': 'Dieses Stück hat kein Teil {piece} mit einem Exemplar {copy}.',
  'refusal.plan.unwashed':
    'Der Stoff für dieses Stück ist noch nicht gewaschen. Erst waschen oder angeben, dass trotzdem geschnitten wird.',
  'refusal.plan.notBought':
    'Der Stoff für dieses Stück ist nicht im Haus: {length} sind zu kaufen. Ist er doch da, ihn erst beim Stoff eintragen, oder angeben, dass er trotzdem gewaschen ist.',
  'refusal.plan.onItsWay':
    'Der Stoff für dieses Stück ist noch unterwegs. Ist er da, es erst beim Stoff angeben, oder angeben, dass er trotzdem gewaschen ist.',
  'refusal.plan.unmeasured':
    'Dieser Stoff wurde gewaschen, aber niemand hat gemessen, was davon übrig ist. Messen oder angeben, dass trotzdem geschnitten wird.',
  'refusal.wash.short':
    'Der Stoff ist jetzt {length} lang, der Zuschneideplan braucht {needed}. Ein längeres Stück derselben Länge nehmen, wo mehr frei ist; sonst am Angebotstisch enger auflegen, kleiner zuschneiden oder mehr kaufen.',
  'refusal.plan.moneyTaken':
    'Für Auftrag {number} ist Geld eingegangen. Erst regeln, was bleibt und was zurückgeht.',
  'refusal.quote.notAmendable':
    'Angebot {number}: {state}. Nur ein noch offener Auftrag lässt sich durch ein anderes Angebot ändern.',
  'days.why.cloth': 'wartet auf Stoff, erwartet am {day}',
  'days.why.clothUnknown': 'wartet auf Stoff, der nicht bestellt ist',
  'days.why.fitting': 'wartet auf die Anprobe am {day}',
  'days.why.payment': 'wartet auf die Anzahlung',
  'days.why.wash': 'wartet auf das Nachmessen nach der Wäsche',
  'days.late.past': 'sein Tag ist vorbei',
  'days.late.cloth': 'sein Stoff oder eine Anprobe kommt zu spät',
  'days.late.others': 'andere Arbeit ist vorher fällig',
  'days.late.hours': 'er braucht mehr Stunden, als bis dahin da sind',
  'days.late.wait': 'zwischendurch muss es trocknen und aushängen',
  'days.never.noSkill': 'niemand hier macht diese Art Arbeit',
  'days.never.noHours': 'in der Woche sind dafür keine Stunden',
  'days.never.other': 'lässt sich nie beginnen',
}
