import type { Path, Point } from '../geometry/types.ts'
import type { MeasureId } from '../measure/vocabulary.ts'
import type { Phrase } from '../words/phrase.ts'

/** Which cloth a piece is cut from: the garment's own, its facing, its lining, or what stiffens it between them. */
export const CLOTH_ROLES = ['main', 'facing', 'lining', 'interlining'] as const
export type ClothRole = (typeof CLOTH_ROLES)[number]

/**
 * A named side of a piece, or of an opening or slit in it, with its finished line and the allowance added
 * to it. Slits have two edges each, one for each side, along the same line.
 */
export type Edge = {
  id: string
  /** `outline`, or the id of the opening or slit the edge belongs to. */
  on: string
  path: Path
  /** Finished length in mm. */
  length: number
  /** Width of cloth left beyond the finished line, mm. 0 on a fold; 3–5 on a selvedge. */
  allowance: number
  /** Whether the allowance is folded back along the edge (a hem), which shapes its corners. */
  turned: boolean
}

/**
 * A cut without width. It is sewn as a wedge: nothing at `apex`, one `allowance` on each side at `open`,
 * so it takes 2 × allowance out of the panel's width at its open end.
 */
export type Slit = { id: string; apex: Point; open: Point; allowance: number }

/** One piece of cloth to cut of this shape. `mirrored` copies are cut with the pattern face down. */
export type Copy = { id: string; name: Phrase; mirrored: boolean }

/** A shape to cut, in the position it is drafted: y along the warp unless `grain` is `bias`. */
export type Piece = {
  id: string
  name: Phrase
  copies: Copy[]
  /** Finished outline, anticlockwise, not crossing itself. */
  outline: Path
  /** Outline to cut: the finished one and every edge's allowance. Anticlockwise. */
  cut: Path
  /** Openings wholly inside the piece, as finished and as cut. Clockwise. */
  openings: { id: string; finished: Path; cut: Path }[]
  slits: Slit[]
  edges: Edge[]
  grain: 'straight' | 'bias'
  /** Angles in degrees the piece may be turned by on cloth without nap. */
  turn: readonly (0 | 90 | 180 | 270)[]
  cloth: ClothRole
  /** Lies over the shoulder, so that one half of it hangs against a nap or a one-way print. */
  hangsBothWays?: true
  /** A join may lie anywhere on it, across its curves and its middle too: the wide cloth of a cloak. */
  joinsFreely?: true
  /** The edges that no join may cut through; every curved one, if it is not said. */
  keptWhole?: readonly string[]
  /** Finished sizes a maker would write on the piece. */
  sizes: { name: Phrase; mm: number }[]
}

/** Part of an edge of one copy, from one mark to another, mm along the finished edge from its start. */
export type Span = { piece: string; copy: string; edge: string; from: number; to: number }

/** What a seam joins. How it is sewn and how long it takes goes by this, and so do the sums of a draft. */
export type SeamKind =
  | 'shoulder'
  | 'side'
  | 'underarm'
  | 'armhole'
  | 'gusset'
  | 'gore'
  | 'goreToGore'
  | 'facing'
  | 'facingJoin'
  | 'piecing'
  | 'band'
  | 'centre'
  | 'strap'
  | 'foot'

/** How the allowances of a seam end: pressed open and left, or one folded over the other and felled. */
export type SeamFinish = 'open' | 'felled' | 'faced'

/** Folds of one kind: how deep each lies and how many there are. A cartridge pleat's depth is that of its tube. */
export type Pleats = { kind: 'knife' | 'box' | 'cartridge'; depth: number; count: number }

/** Two chains of spans sewn together. `ratio` is side a ÷ side b: 1 unless eased or gathered on purpose. */
export type Seam = {
  id: string
  kind: SeamKind
  name: Phrase
  a: Span[]
  b: Span[]
  ratio: number
  /** Rows of gathering thread run through side a. */
  gathers?: number
  /** Folds that take up side a instead. */
  pleats?: Pleats
  finish: SeamFinish
  /** Finished length in mm (of side b). */
  length: number
}

/** What is turned and sewn, or laid on and sewn down; stitches, times and sums go by this. */
export type HemKind =
  | 'neck'
  | 'slit'
  | 'wrist'
  | 'bottom'
  | 'facingEdge'
  | 'edge'
  | 'band'
  | 'lining'
  | 'laidOn'
  | 'tacked'

/** A span turned and sewn. `depth` is the finished depth, `allowance` depth + first turning, in mm. */
export type Hem = {
  id: string
  kind: HemKind
  name: Phrase
  spans: Span[]
  length: number
  depth: number
  allowance: number
  seen: boolean
  /** Extra length to ease in at the hem's raw edge, as a ratio of its curved length. */
  fullness: number
}

/** The parts of a making, in the order of the work. */
export const STAGES = ['prepare', 'cut', 'sew', 'fit', 'hem', 'finish'] as const
export type Stage = (typeof STAGES)[number]

/** Work that is not a line of stitches; `quantity` is in the operation's own unit. */
export type OperationId =
  | 'prewash'
  | 'press'
  | 'layOut'
  | 'cutOut'
  | 'cutPiece'
  | 'clipNeck'
  | 'reinforceSlit'
  | 'setGusset'
  | 'pressSeams'
  | 'tryOn'
  | 'hangBias'
  | 'levelHem'
  | 'setGathers'
  | 'setPleat'
  | 'drawCord'
  | 'sewButton'
  | 'workButtonhole'
  | 'workEyelet'
  | 'threadLace'
  | 'sewHook'
  | 'sewTape'
  | 'toile'
  | 'fitToile'
  | 'growthTuck'
  | 'sewTrim'
  | 'unpick'
  | 'darn'
  | 'finalPress'
  | 'pack'

/** One operation of the making, in order. Seams and hems are named by id; each is sewn in one step. */
export type Step = {
  id: string
  stage: Stage
  name: Phrase
  seams: string[]
  hems: string[]
  operations: { operation: OperationId; quantity: number }[]
  cautions: Phrase[]
}

/** One question of the fit report, at a real level of the body. All in mm. */
export type FitCheck = {
  id: string
  name: Phrase
  status: 'good' | 'fails' | 'unchecked'
  /** What the garment gives. */
  garment?: number
  /** What the body needs, ease included. */
  needs?: number
  /** Whether the garment must reach `needs` (`least`) or stay below it (`most`). */
  bound: 'least' | 'most'
  /** The choice that would mend a failing check, in a sentence. */
  mend?: Phrase
  /** Measures that are missing when unchecked. */
  missing?: MeasureId[]
}

/** Small things that are bought by the piece or by the length, and not cut from the cloth. */
export const NOTIONS_BY_PIECE = ['button', 'hook', 'clasp', 'point'] as const
export const NOTIONS_BY_LENGTH = ['lace', 'cord', 'tape', 'trim'] as const
export const NOTIONS = [...NOTIONS_BY_PIECE, ...NOTIONS_BY_LENGTH] as const
export type NotionId = (typeof NOTIONS)[number]

/** How many of a notion, or how long, mm. */
export type Notion = { notion: NotionId; count: number } | { notion: NotionId; mm: number }

/**
 * The finished garment as it lies flat, from the front unless said otherwise: mm, hem below, the wearer's right at the left.
 * `edges` are where the cloth ends or is folded, `seams` lines within it, `behind` what shows only from behind.
 */
export type Flat = {
  /** How it is seen, if not from the front. */
  view?: 'side' | 'spread' | 'unfolded'
  edges: Path[]
  seams: Path[]
  behind: Path[]
  /** Finished sizes to write by it, from one point to another. */
  sizes: { from: Point; to: Point; mm: number }[]
}

/** What was chosen: mm or a count, an id of an option, or yes and no. */
export type ChoiceValue = number | string | boolean

/**
 * A garment for one body: all that is cut, sewn and done, and how it fits. It leaves its room only through
 * `assertSewable`.
 */
export type Draft = {
  construction: string
  /** What it is called, when that does not stand in the catalogue under its construction. */
  title?: Phrase
  /** Every choice with the value used, defaults resolved for this body. Lengths in mm. */
  choices: Record<string, ChoiceValue>
  pieces: Piece[]
  seams: Seam[]
  hems: Hem[]
  steps: Step[]
  fit: FitCheck[]
  cautions: Phrase[]
  /** What is bought besides cloth and thread. Quotes of old were frozen without it, and without `flat`. */
  notions?: Notion[]
  flat?: Flat
  /** Finished sizes of the garment, for the order and the quote. */
  sizes: { id: string; name: Phrase; mm: number }[]
  /** Finished lengths by class of seam and hem, mm, and finished area of all copies, mm². */
  totals: { seams: Partial<Record<SeamKind, number>>; hems: Partial<Record<HemKind, number>>; area: number }
}
