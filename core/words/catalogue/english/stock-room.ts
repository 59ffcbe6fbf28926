/** Lengths that are ordered and do not come, and remnants: where they lie, and what makes lengths of them. */
export const stockRoom = {
  'refusal.shopping.notListed':
    'No {cloth} is missing for open work. Add a length on the cloth page if you order more.',
  'refusal.shopping.before': 'It cannot come before it is ordered, on {day}. Correct the day.',
  'refusal.remnant.noCloth':
    'This remnant is of no cloth in your list, so it cannot lie with the lengths of one.',
  'refusal.remnant.inStock': 'This remnant lies with the lengths of its cloth now. Count it there.',
  'refusal.remnant.used': 'This remnant is marked as used up. Untick it first if it is still there.',
  'life.stock.callOff': 'It will not come',
  'life.stock.callOff.what':
    'What it was set aside for stands on the shopping list again, and the length is no longer expected.',
  'life.stock.callOffKeep': 'Take it off',
  'remnant.at': 'at {place}',
  'remnant.washed': 'washed',
  'remnant.unwashed': 'not washed',
  'remnant.place': 'Place',
  'remnant.place.act': 'Put it elsewhere',
  'remnant.place.keep': 'Keep the place',
  'remnant.toStock': 'Put it with the lengths',
  'remnant.toStock.what':
    'It becomes a length of its own above, to be set aside, counted and cut like any other. Only one that goes across the whole cloth is offered for garments.',
  'remnant.toStock.keep': 'Put it with the lengths',
} as const
