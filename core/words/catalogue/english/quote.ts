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
  'quote.state.sent': 'waiting for an answer',
  'quote.state.accepted': 'accepted',
  'quote.state.superseded': 'replaced by another',
  'quote.state.declined': 'declined',
  'quote.describe.cloth': 'Cloth: {cloth}; washed before it is cut.',
  'quote.describe.lining': 'The lining of {cloth}.',
  'quote.describe.interlining': 'Stiffened with {cloth}.',
  'quote.describe.facing': 'Facings of {cloth}.',
  'quote.describe.sewn': 'Sewn {plan}.',
  'refusal.quote.empty': 'A quote needs at least one garment.',
} as const
