/** The wearer's own left and right. */
export const HANDS = ['left', 'right'] as const
export type Hand = (typeof HANDS)[number]

/** The two sides of a body. */
export const PARTS = ['front', 'back'] as const
export type Part = (typeof PARTS)[number]

/** Where a front or back meets a side, by the wearer's own left and right. */
export type Quarter = 'frontLeft' | 'frontRight' | 'backLeft' | 'backRight'

/** The four places where a front or back meets a side. */
export const QUARTERS: readonly { id: Quarter; part: Part; hand: Hand }[] = [
  { id: 'frontLeft', part: 'front', hand: 'left' },
  { id: 'frontRight', part: 'front', hand: 'right' },
  { id: 'backLeft', part: 'back', hand: 'left' },
  { id: 'backRight', part: 'back', hand: 'right' },
]

/** Whether a quarter lies at the drawn right of its panel when the panel lies face up. */
export const atRight = (quarter: Quarter): boolean => quarter === 'frontLeft' || quarter === 'backRight'
