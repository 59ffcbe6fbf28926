/** The language and region of the workroom, and what a new workroom begins with in its language. */
export const regions = {
  'screen.settings.language': 'Language',
  'screen.settings.region': 'Days, numbers and money are written as in',
  'screen.settings.region.example': 'Such as {date}, {number} and {money}.',
  'screen.settings.region.about':
    'Language and manner of writing are for the screens and for papers yet to be made. Quotes already made keep the language they were written in; names you gave yourself stay as they are.',
  'begin.tax': 'VAT',
  'begin.thread.hand': 'linen thread',
  'begin.thread.machine': 'cotton thread',
  'begin.term.cloth': 'Cloth is washed before it is cut.',
  'begin.term.wool': 'Wool may shrink again if it is washed hot.',
  'begin.term.measures': 'Measures are those of the day named; one fitting is included.',
  'begin.term.deposit': 'Work begins when the deposit has come in.',
  'begin.term.brought':
    'Cloth you bring is washed and cut with the same care as ours, but its faults, its shrinking and its running short are not ours to make good.',
  'refusal.number.typed': 'No number can be read here. Write it without thousands marks, such as {example}.',
  'day.letters': 'dmy',
  'day.pick': 'Choose from the calendar',
  'refusal.date.typed': '“{text}” is no day that can be read. Write it like {example}.',
} as const
