/** A client's own page, and what the list says of her. */
export const client = {
  'client.made': 'Quoted and made for her',
  'client.made.state': 'What became of it',
  'client.made.open': 'in work',
  'client.change': 'Change name, address or note',
  'client.change.keep': 'Keep it',
  'client.name': 'Name',
  'client.phone': 'Telephone',
  'client.birthDay': 'Born on',
  'client.birthDay.help': 'For children: it decides on cords and on how sizes are judged.',
  'client.note': 'Note: allergies, likes, how she is best reached',
  'client.unmeasured': 'not measured yet',
  'client.measured': 'measured {day}',
  'client.open.one': 'a commission in work',
  'client.open': '{count} commissions in work',
  'client.onlyNeeded': 'Only what a tunic needs',
} as const
