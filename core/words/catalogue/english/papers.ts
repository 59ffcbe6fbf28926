/** The ways to the papers, on the screens. */
export const papers = {
  'papers.more': 'More papers',
  'papers.pattern.on': 'Pattern printed on',
  'papers.on.A4': 'A4, to put together',
  'papers.on.A3': 'A3, to put together',
  'papers.on.Letter': 'Letter, to put together',
  'papers.on.oneSheet': 'one sheet of its own size',
  'papers.pattern.svg': 'Pattern as a drawing (SVG)',
  'papers.labels': 'Labels for what is cut',
  'papers.print': 'Print',
  'papers.printOf': 'Print {number}',
  'papers.remind': 'Write a reminder',
  'mark.title': 'The mark on your papers',
  'mark.about':
    'It stands over your name on quotes, invoices and care sheets. Quotes already made keep theirs.',
  'mark.none': 'There is no mark yet.',
  'mark.choose': 'Choose a picture',
  'mark.remove': 'Take it off',
  'mark.alt': 'Your mark',
  'mark.unreadable': '{name} is no picture that can be read. Take a PNG, JPEG or WebP file.',
  'refusal.mark.png': 'That is no PNG picture of at most {most} MB.',
} as const
