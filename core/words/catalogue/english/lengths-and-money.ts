/** Lengths, days and money that cannot be read. */
export const lengthsAndMoney = {
  'refusal.length.empty': 'There is no length here. Type one, such as 97.8 cm or 38 1/2 in.',
  'refusal.length.unreadable':
    '“{text}” cannot be read as a length. Write it like 97.8 cm, 38 1/2 in or 1 yd 4 nl.',
  'refusal.length.ambiguous':
    '“{text}” can be read in two ways. Write it without thousands marks and with one decimal sign or one fraction.',
  'refusal.length.mixed': '“{text}” mixes metric and inch measure. Write it in one of them.',
  'refusal.length.order': '“{text}” should name the larger unit first and each unit once, like 1 yd 4 nl.',
  'refusal.length.noUnit': 'In “{text}” one number has no unit. Give every number its unit, like 5 ft 6 in.',
  'refusal.length.negative': '“{text}” is less than nothing. A length must be greater than zero.',
  'refusal.length.zero': 'A length of zero cannot be used. Leave it empty if it is not known.',
  'refusal.length.absurd': '“{text}” is far too long. Check the number and its unit.',
  'refusal.date.unreadable':
    '“{text}” is not a day of the calendar. Write it as year-month-day, like 2026-11-25.',
  'refusal.money.unreadable': '“{text}” is not an amount in whole pence or cents.',
  'refusal.money.currencies':
    'Amounts in {one} and {other} cannot be added. The workroom keeps one currency.',
  'refusal.money.noWeights': 'An amount cannot be divided when no part has any share in it.',
  'refusal.time.unreadable': '“{text}” is no time that can be read. Write 90, 1:30 or 1 h 30.',
} as const
