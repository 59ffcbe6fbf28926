/** Quotes and commissions. */
export const quote = {
  'refusal.quote.otherBody': 'These measures are not those of {wearer}. Choose one of the wearer’s own sets.',
  'refusal.quote.notSent':
    'Quote {number} is {state}. Only a quote that still waits for an answer can be accepted, declined or replaced.',
  'refusal.plan.noStage': 'This garment has no step at the stage “{stage}”.',
  'refusal.remnant.uncut':
    'The cloth of this garment is not cut yet, so there is nothing left over. Tick the cutting first.',
  'refusal.remnant.none': 'The lay of this garment leaves {count} rectangles, numbered from 0.',
  'refusal.plan.toile':
    'This garment is not cut before its toile has been made and fitted. Do that first, and tick it.',
  'refusal.plan.estimated':
    'Of the measures this garment is drafted by {count} were estimated and never taken, the {measure} among them. Measure before you cut, or say that you cut all the same.',
  'refusal.plan.closed': 'Commission {number} is closed. Nothing in it can be ticked any more.',
  'refusal.plan.notDelivered':
    'Commission {number} has not been delivered, so there is nothing to take back.',
  'refusal.time.nothing': 'Say which steps the time was spent on.',
  'refusal.time.several': 'These steps belong to several commissions. Log the time for each of them.',
  'refusal.quote.noOption': 'There is no such option on this quote. Take one that is printed on it.',
  'refusal.quote.noThread': 'There is no such thread in the drawer. Choose another.',
  'plan.advice.moreCloth':
    'Garments took {percent} % more cloth than was quoted. Buy more on top, or lay closer.',
  'plan.advice.lessCloth': 'Garments took {percent} % less cloth than was quoted. You may buy less on top.',
  'plan.advice.moreHours':
    'The work took {percent} % more hours than was quoted. What you have logged since is in every new price.',
  'plan.advice.lessHours':
    'The work took {percent} % fewer hours than was quoted. What you have logged since is in every new price.',
  'plan.advice.step':
    'What ran over most is “{step}” in {number}: {actual} instead of {quoted}. Look whether it was the work or the clock; if it was the work, its time under “Your times” is what to trust.',
  'plan.advice.raise':
    'An hour earned {earned}, and you mean to earn {target}. At the hours you worked, prices {percent} % higher would have paid that.',
  'quote.payment.acceptance': 'on acceptance',
  'quote.payment.cutting': 'before the cloth is cut',
  'quote.payment.fitting': 'at the fitting',
  'quote.payment.delivery': 'on delivery',
  'quote.option.lined': 'lined',
  'quote.option.unlined': 'without lining',
  'quote.option.cloth': 'in {cloth}',
  'quote.option.plan': 'sewn {plan}',
  'quote.state.sent': 'waiting for an answer',
  'quote.state.accepted': 'accepted',
  'quote.state.superseded': 'replaced by another',
  'quote.state.declined': 'declined',
  'quote.describe.cloth': 'Cloth: {cloth}; washed before it is cut.',
  'quote.describe.brought': 'Cloth: your own, {cloth}, {needed} of it; washed before it is cut.',
  'quote.describe.lining': 'The lining of {cloth}.',
  'quote.describe.interlining': 'Stiffened with {cloth}.',
  'quote.describe.facing': 'Facings of {cloth}.',
  'quote.describe.sewn': 'Sewn {plan}.',
  'refusal.quote.empty': 'A quote needs at least one garment.',
} as const
