/** Cloths one can buy: who sells them, and what a test square says of their shrinking. */
export const cloths = {
  'cloth.supplier': 'From whom',
  'cloth.supplier.help': 'The shop or weaver you order it from.',
  'cloth.leadDays': 'Days until it comes',
  'cloth.leadDays.help': 'From ordering to its arrival.',
  'cloth.from': 'from {supplier} within {days} days',
  'cloth.change': 'Change it',
  'cloth.change.keep': 'Keep the change',
  'cloth.change.quoted': 'Quotes already made keep the cloth as it was.',
  'cloth.square': 'Test square',
  'cloth.square.how':
    'Mark a square of this cloth with thread, both ways, the marks at least {apart} from each other. Measure, wash and dry it as the garment will be, let it lie flat, and measure between the same marks again.',
  'cloth.square.warp': 'Along the selvedge',
  'cloth.square.weft': 'From selvedge to selvedge',
  'cloth.square.before': 'Before the wash',
  'cloth.square.after': 'After the wash',
  'cloth.square.pair': '{way}, marks {number}',
  'cloth.square.more': 'More marks',
  'cloth.square.read': 'Reckon the shrinkage',
  'cloth.square.says': 'It shrinks {warp} % in length and {weft} % in width.',
  'cloth.square.now': 'In the book it is {warp} % and {weft} %.',
  'cloth.square.keep': 'Keep it as this cloth’s shrinkage',
} as const
