import type { quote as english } from '../english/quote.ts'
import type { Translated } from '../translated.ts'

/** Quotes and commissions. */
export const quote: Translated<typeof english> = {
  'refusal.quote.otherBody':
    'Das sind nicht die Maße von {wearer}. Einen eigenen Maßsatz dieser Person wählen.',
  'refusal.quote.notSent':
    'Angebot {number}: {state}. Nur ein Angebot, das noch auf Antwort wartet, lässt sich annehmen, ablehnen oder ersetzen.',
  'refusal.plan.noStage': 'Dieses Stück hat keinen Schritt im Abschnitt „{stage}“.',
  'refusal.remnant.uncut':
    'Der Stoff für dieses Stück ist noch nicht zugeschnitten, also ist nichts übrig. Erst das Zuschneiden abhaken.',
  'refusal.remnant.none': 'Reststücke im Zuschneideplan dieses Stücks: {count}; die Zählung beginnt bei 0.',
  'refusal.plan.toile':
    'Dieses Stück wird erst zugeschnitten, wenn sein Nesselmodell gemacht und anprobiert ist. Das zuerst tun und abhaken.',
  'refusal.plan.estimated':
    'Von den Maßen dieses Schnitts sind {count} nur geschätzt und nie genommen, darunter: {measure}. Vor dem Zuschneiden messen oder angeben, dass trotzdem geschnitten wird.',
  'refusal.plan.closed': 'Auftrag {number} ist abgeschlossen. Darin lässt sich nichts mehr abhaken.',
  'refusal.plan.notDelivered': 'Auftrag {number} ist nicht übergeben, also gibt es nichts zurückzunehmen.',
  'refusal.time.nothing': 'Angeben, für welche Schritte die Zeit war.',
  'refusal.time.several':
    'Diese Schritte gehören zu mehreren Aufträgen. Die Zeit für jeden einzeln eintragen.',
  'refusal.quote.noOption':
    'Diese Möglichkeit steht nicht auf dem Angebot. Eine nehmen, die darauf gedruckt ist.',
  'refusal.quote.noThread': 'Dieses Garn liegt nicht in der Schublade. Ein anderes wählen.',
  'plan.advice.moreCloth':
    'Die Stücke brauchten {percent} % mehr Stoff als angeboten. Den Stoffzuschlag erhöhen oder enger auflegen.',
  'plan.advice.lessCloth':
    'Die Stücke brauchten {percent} % weniger Stoff als angeboten. Der Stoffzuschlag darf kleiner werden.',
  'plan.advice.moreHours':
    'Die Arbeit brauchte {percent} % mehr Stunden als angeboten. Was seither eingetragen ist, steckt in jedem neuen Preis.',
  'plan.advice.lessHours':
    'Die Arbeit brauchte {percent} % weniger Stunden als angeboten. Was seither eingetragen ist, steckt in jedem neuen Preis.',
  'plan.advice.step':
    'Am weitesten daneben lag „{step}“ in {number}: {actual} statt {quoted}. War es die Arbeit oder die Uhr? War es die Arbeit, gilt die Zeit unter „Die eigenen Zeiten“.',
  'plan.advice.raise':
    'Eine Stunde brachte {earned}, gewollt sind {target}. Bei den gearbeiteten Stunden hätten um {percent} % höhere Preise dafür gereicht.',
  'quote.payment.acceptance': 'bei Annahme',
  'quote.payment.cutting': 'vor dem Zuschneiden',
  'quote.payment.fitting': 'bei der Anprobe',
  'quote.payment.delivery': 'bei Übergabe',
  'quote.option.lined': 'gefüttert',
  'quote.option.unlined': 'ohne Futter',
  'quote.option.cloth': 'in {cloth}',
  'quote.option.plan': '{plan} genäht',
  'quote.state.sent': 'wartet auf Antwort',
  'quote.state.accepted': 'angenommen',
  'quote.state.superseded': 'durch ein anderes ersetzt',
  'quote.state.declined': 'abgelehnt',
  'quote.describe.cloth': 'Stoff: {cloth}; vor dem Zuschneiden gewaschen.',
  'quote.describe.brought': 'Stoff: Ihr eigener, {cloth}, davon {needed}; vor dem Zuschneiden gewaschen.',
  'quote.describe.lining': 'Futter: {cloth}.',
  'quote.describe.interlining': 'Verstärkt mit {cloth}.',
  'quote.describe.facing': 'Belege: {cloth}.',
  'quote.describe.sewn': 'Genäht {plan}.',
  'refusal.quote.empty': 'Ein Angebot braucht mindestens ein Stück.',
}
