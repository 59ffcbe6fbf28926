/** The full-size pattern of what cannot be chalked from measures alone. */
export const pattern = {
  'draw.pattern.part': 'part of the piece, round its curve; the rest is chalked from its measures',
  'draw.pattern.label': 'Full-size outline: {piece}.',
  'paper.pattern.title': 'Full-size pattern',
  'paper.pattern.squares': 'Two squares to check the print by.',
  'paper.pattern.square.metric': '100 mm by 100 mm',
  'paper.pattern.square.inch': '4 in by 4 in',
  'paper.pattern.foot': 'Pattern {number} · {day} · {title} for {wearer}',
  'paper.pattern.how': 'How to put it together',
  'paper.pattern.how.scale':
    'Print at full size: 100 %, “actual size”, never “fit to page”. Check both squares with a rule on every sheet before cutting. If one is out, do not use the sheet.',
  'paper.pattern.how.trim':
    'Trim each sheet along the thin frame at the left and at the top. Lay it to the dashed line of its neighbour, so that the lines of the pattern run on, and paste or tape it.',
  'paper.pattern.how.lines':
    'Cut along the heavy line: allowances are on it. The thin line is the finished edge. The dashed upright is the middle of the piece.',
  'paper.pattern.how.part':
    'Of a large piece only the part round its curve is drawn. Chalk the piece from the cutting sheet, then lay the part to its edges and its middle.',
  'paper.pattern.how.washed': 'It fits washed cloth. Chalk on cloth that is washed and pressed.',
  'paper.pattern.map': 'How the sheets lie',
  'paper.pattern.map.label': 'Map of {count} sheets: {names}.',
  'paper.pattern.sheet': 'Sheet {name}: {pieces}.',
  'paper.pattern.parts': 'What is on it',
  'paper.pattern.column.piece': 'Piece',
  'paper.pattern.column.what': 'What is drawn',
  'paper.pattern.column.size': 'Width × height',
  'paper.pattern.whole': 'the whole piece',
  'paper.pattern.curve': 'the part round its curve',
  'refusal.pattern.none':
    'Every piece of this garment is chalked from its measures: the cutting sheet has all that is needed.',
} as const
