/** The days of the workroom: people, timers, notes, fittings, dates. */
export const days = {
  'refusal.timer.running':
    'A timer is running already, on commission {number}. Stop it first, or say what was done in that time.',
  'refusal.timer.none': 'No timer is running.',
  'refusal.person.last': 'Somebody must work here. Enter another person before you take this one off.',
  'refusal.absence.order':
    'The last day of a time off comes before its first. Put the days the other way round.',
  'refusal.picture.kind': '{name} is no picture that can be kept. Take a PNG, JPEG or WebP file.',
  'refusal.picture.size': '{name} is too large: {size} MB, and {most} MB is the most. Make it smaller first.',
  'refusal.fitting.held': 'This fitting has been held; what was found can be changed, but not put off.',
  'refusal.plan.noPiece': 'This garment has no piece {piece} with a copy {copy}.',
  'refusal.plan.unwashed':
    'The cloth of this garment is not washed yet. Wash it first, or say that you cut it all the same.',
  'refusal.plan.notBought':
    'The cloth of this garment is not in the house: {length} is to be bought. If it is here, enter it with its cloth first, or say that it is washed all the same.',
  'refusal.plan.onItsWay':
    'The cloth of this garment is still on its way. When it is here, say so with its cloth first, or say that it is washed all the same.',
  'refusal.plan.unmeasured':
    'This cloth was washed, and nobody has measured what is left of it. Measure it, or say that you cut it all the same.',
  'refusal.wash.short':
    'The cloth is {length} long now, and the lay needs {needed}. Take a longer piece of the same length where more of it is free; else lay it closer at the quote desk, cut a smaller size, or buy more.',
  'refusal.plan.moneyTaken':
    'There is money on commission {number}. Settle it first: what is kept and what goes back.',
  'refusal.quote.notAmendable':
    'Quote {number} is {state}. Only a commission that is still open can be changed by another quote.',
  'days.why.cloth': 'waits for cloth, due {day}',
  'days.why.clothUnknown': 'waits for cloth that is not ordered',
  'days.why.fitting': 'waits for the fitting on {day}',
  'days.why.payment': 'waits for the deposit',
  'days.why.wash': 'waits to be measured after the wash',
  'days.late.past': 'its day has gone by',
  'days.late.cloth': 'its cloth or a fitting comes too late',
  'days.late.others': 'other work is due before it',
  'days.late.hours': 'it takes more hours than there are until then',
  'days.late.wait': 'it has to dry and hang in between',
  'days.never.noSkill': 'nobody here does this kind of work',
  'days.never.noHours': 'there are no hours for it in the week',
  'days.never.other': 'it can never be begun',
} as const
