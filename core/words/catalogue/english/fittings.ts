/** What a fitting leads to: work, pieces cut again, and a garment drafted again. */
export const fittings = {
  'paper.step.cameUp': 'Came up in the making',
  'fitting.step.alter': 'Alter what the fitting on {day} found',
  'fitting.step.recut': 'Cut again: {pieces}',
  'refusal.fitting.noMeasures': 'Write at least one measure that changed.',
  'redraft.step.cut': 'Cut for the new draft: {pieces}',
  'refusal.redraft.noPiece': '{piece} is not a piece of the new draft. Tick pieces of the list.',
  'refusal.redraft.same':
    'That is how it is drafted already. Change a choice or take other measures, or leave it as it was.',
  'redraft.title': 'Draft it again',
  'redraft.about':
    'Pieces, steps, papers and cloth follow the new draft. What is done stays done, and the price stays as it was agreed.',
  'redraft.garment': 'Which garment',
  'redraft.set': 'taken on {day}',
  'redraft.set.now': 'taken on {day}, as it is drafted now',
  'redraft.keep': 'Make it so',
  'redraft.changes': 'What would change',
  'redraft.none': 'No piece changes.',
  'redraft.piece': 'Piece, as cut',
  'redraft.before': 'Was',
  'redraft.after': 'Would be',
  'redraft.smaller': 'cut: can be cut smaller',
  'redraft.anew': 'cut: needs new cloth',
  'redraft.added': 'New: {pieces}.',
  'redraft.gone': 'No longer needed: {pieces}.',
  'redraft.figures':
    'Cloth as bought: {before} before, {after} now. Hours of making: {hoursBefore} before, {hoursAfter} now.',
  'redraft.recut': 'The garment is cut already. Pieces to cut for the new draft',
  'redraft.part.found': '1 of 3: what was found',
  'redraft.part.measures': '2 of 3: measures that changed',
  'redraft.part.draft': '3 of 3: what is made otherwise',
  'redraft.measure': 'Take measures anew',
  'redraft.measure.about':
    'Write only what has changed. The rest is carried over, and a new set is dated today.',
  'redraft.measure.pass': 'No measure changed, go on',
  'redraft.measure.keep': 'Keep the new measures',
} as const
