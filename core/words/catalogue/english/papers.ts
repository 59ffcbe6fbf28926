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
} as const
