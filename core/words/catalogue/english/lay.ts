/** Cloth and layouts. */
export const lay = {
  'refusal.lay.width':
    'The width of the cloth cannot be right. Give it as it is sold, more than nothing and up to 6 metres.',
  'refusal.lay.selvedge': 'The selvedges cannot take up the whole cloth. Give the width lost at each side.',
  'refusal.lay.warpShrinkage':
    'Shrinkage along the cloth must be between nothing and a half, such as 0.05 for 5 %.',
  'refusal.lay.weftShrinkage':
    'Shrinkage across the cloth must be between nothing and a half, such as 0.03 for 3 %.',
  'refusal.lay.increment': 'The shop must sell the cloth by some length. Give the step, such as 10 cm.',
  'refusal.lay.thickness':
    'The thickness of the cloth cannot be right. Give that of one layer, such as 0.4 mm.',
  'refusal.lay.tooNarrow':
    'The piece “{piece}” is {width} wide with its allowances, and the cloth only {usable} washed and without selvedges. Choose a wider cloth, less ease or more gores.',
  'refusal.lay.tooNarrowDoubled':
    'The piece “{piece}” is {width} wide with its allowances, and the cloth folded in half only {usable}. Lay it in one layer.',
  'refusal.lay.lockedSingle':
    'Pieces can be held in their place only while the cloth lies flat in one layer. Let them go, or lay it so.',
  'refusal.lay.lockedTurn': 'A piece held in its place is turned in a way it may not lie on this cloth.',
  'refusal.lay.lockedOff': 'A piece held in its place lies beyond the cloth. Move it, or let it go.',
  'refusal.lay.stale': 'This lay is not one of these pieces on this cloth any more. Lay them out again.',
  'refusal.lay.noPlaces': 'Give the place of every piece.',
  'lay.broken': 'The search for a shorter lay broke down. This is the best it had found; it can be cut.',
  'lay.fault.overlap': 'Two pieces lie over each other.',
  'lay.fault.offCloth': 'A piece lies beyond the cloth.',
  'lay.fault.angle': 'A piece is turned against the grain or the nap.',
  'lay.fault.hand': 'A piece lies wrong side up.',
  'lay.fault.count': 'A piece is missing, or lies there twice.',
  'lay.fault.flaw': 'A piece lies on a flaw in the cloth.',
  'lay.fault.torn': 'A piece lies across a tear.',
  'lay.fault.length': 'The length stated is not that of the pieces.',
  'refusal.lay.napOverShoulder':
    'The piece “{piece}” lies over the shoulder, so half of it would hang against the nap of this cloth. Choose a shoulder seam, or a cloth without nap.',
  'lay.tight':
    'This lay takes the whole width: the cloth must be {taken} wide between the selvedges all along, once it is washed. Where it is narrower, lay it out anew before cutting.',
  'lay.stepLess': 'Were the lay {less} shorter, {step} of cloth less would be bought: {saved}.',
  'lay.ofGarment': '{garment}: {piece}',
} as const
