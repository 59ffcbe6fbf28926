/** What leads on: from a figure to where it is set, and from an empty screen to the next act. */
export const guiding = {
  'guiding.rates': 'These rates are starting figures.',
  'guiding.rates.set': 'Set your own',
  'guiding.address': 'Your address is not set, so it will not be on the quote.',
  'guiding.address.quoted': 'Your address was not set when this quote was saved, so it is not on the paper.',
  'guiding.address.set': 'Set it',
  'guiding.address.next': 'Set it for the next ones',
  'guiding.deposit': 'Where the deposit is set',
  'guiding.begun': 'Money in {currency}, lengths in {unit}, prints on {paper}; change it under Workroom.',
  'guiding.alone': 'For you alone',
  'guiding.alone.about': 'What was reckoned with when this quote was saved. None of it is on the paper.',
  'guiding.alone.profit': 'Profit',
  'guiding.alone.together': 'Together',
  'guiding.answer': 'What the client says',
  'guiding.printed': 'printed {day}',
  'guiding.look.close': 'Close it',
  'guiding.lay.figures':
    'Figures at the corners are millimetres from the near selvedge / from the cut end; the rule counts millimetres from the cut end.',
  'guiding.print':
    'To lie beside the keyboard: the way to a first quote, the places and the keys, on one page.',
} as const
