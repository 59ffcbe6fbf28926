import { type Fibre, fibresOf, fibreWords } from '../lay/fibres.ts'
import { flameOf } from '../lay/flame.ts'
import type { QuotedCloth } from '../quote/types.ts'
import type { PhraseCode } from '../words/phrase.ts'
import { say } from '../words/say.ts'
import type { Block } from './block.ts'
import { type Care, careOf } from './care.ts'
import { layPages } from './flow.ts'
import { capital } from './names.ts'
import type { PaperDocument } from './page.ts'
import {
  footOf,
  type GarmentSheet,
  letterhead,
  listed,
  readerOf,
  refuseUnprintable,
  type Teller,
  tellerOf,
} from './sheet.ts'

/** Cautions of a draft that the wearer must know too, and what is said to her of each. */
const FOR_THE_WEARER: Partial<Record<PhraseCode, PhraseCode>> = {
  'draft.caution.trailing': 'paper.care.safe.trailing',
  'draft.caution.catches': 'paper.care.safe.catches',
  'draft.caution.cordEnds': 'paper.care.safe.cords',
  'draft.caution.cordsSmall': 'paper.care.safe.cords',
  'draft.caution.cordsChild': 'paper.care.safe.cords',
  'draft.caution.cloakTies': 'paper.care.safe.closing',
  'draft.caution.weakClosing': 'paper.care.safe.closing',
  'draft.caution.pinned': 'paper.care.safe.pinned',
}

/**
 * What goes home with a garment: how it is washed by its fibres in the steps of ISO 3758, kept, and worn safely.
 *
 * @throws Refusal at the field that holds a character no font has
 */
export function careSheet(sheet: GarmentSheet): PaperDocument {
  const { snapshot, line, commissionNumber, day } = sheet
  refuseUnprintable(snapshot)
  const reader = readerOf(snapshot)
  const tell = tellerOf(reader)
  const words = fibreWords(line)
  const fibres = [...new Set(words.flatMap(fibresOf))]
  const own = line.estimate.draft.cautions
  const cautions = new Set(own.flatMap(({ code }) => FOR_THE_WEARER[code] ?? []))
  const flame = own.some(({ code }) => code === 'draft.caution.flame')
  const heading = (words: string): Block => ({ kind: 'heading', level: 2, words })
  const title = capital(tell('paper.garment.forWhom', { title: line.title, wearer: line.wearer.name }))
  const blocks: Block[] = [
    ...letterhead(snapshot),
    { kind: 'space', height: 6 },
    { kind: 'heading', level: 1, words: tell('paper.care.title') },
    { kind: 'paragraph', words: title, look: 'total', before: 1 },
    heading(tell('paper.care.made')),
    listed([
      made(line.cloth, tell),
      ...Object.entries(line.others ?? {}).map(([role, cloth]) =>
        tell(`paper.care.role.${role as keyof NonNullable<typeof line.others>}`, {
          cloth: made(cloth, tell),
        }),
      ),
    ]),
    heading(tell('paper.care.washing')),
    ...(fibres.includes('other') ? [{ kind: 'paragraph' as const, words: tell('paper.care.unknown') }] : []),
    steps(careOf(fibres), tell),
    {
      ...{ kind: 'beside', share: 0.5 },
      left: [
        heading(tell('paper.care.first')),
        listed((['press', 'alone', 'hem'] as const).map((id) => tell(`paper.care.first.${id}`))),
      ],
      right: [heading(tell('paper.care.keep')), listed(keeping(fibres, tell))],
      before: 5,
    },
    {
      kind: 'together',
      blocks: [
        heading(tell('paper.care.safe')),
        {
          kind: 'panel',
          bar: 'madder',
          blocks: [
            listed([
              ...(flame ? [say(flameOf(words), reader)] : []),
              ...[...cautions].map((code) => tell(code)),
              tell('paper.care.safe.fibre', {
                fibres: fibres.map((one) => tell(`paper.care.fibre.${one}`)).join(', '),
              }),
              tell('paper.care.safe.iron'),
              tell('paper.care.safe.law'),
            ]),
          ],
        },
      ],
    },
  ]
  const foot = tell('paper.care.foot', {
    ...{ number: commissionNumber, day: { date: day }, title: line.title, wearer: line.wearer.name },
  })
  return layPages(blocks, snapshot.letterhead.paper, footOf(tell, foot))
}

const made = ({ name, fibre }: Pick<QuotedCloth, 'name' | 'fibre'>, tell: Teller): string =>
  fibre.trim() === '' ? tell('paper.care.clothOnly', { name }) : tell('paper.care.cloth', { name, fibre })

/** The five steps, each with its sign in words and what it asks for. */
function steps({ wash, dry, iron }: Care, tell: Teller): Block {
  const rows = [
    ['wash', tell(`paper.care.wash.${wash}.sign`), tell(`paper.care.wash.${wash}`)],
    ['bleach', tell('paper.care.bleach.sign'), tell('paper.care.bleach')],
    ['dry', tell(`paper.care.dry.${dry}.sign`), tell(`paper.care.dry.${dry}`)],
    ['iron', tell(`paper.care.iron.${iron}.sign`), tell(`paper.care.iron.${iron}`)],
    ['clean', tell('paper.care.clean.sign'), tell('paper.care.clean')],
  ] as const
  return {
    kind: 'table',
    columns: [
      { heading: tell('paper.care.column.step'), share: 24, look: 'cellStrong', head: true },
      { heading: tell('paper.care.column.symbol'), share: 50 },
      { heading: tell('paper.care.column.means'), share: 98 },
    ],
    rows: rows.map(([id, sign, means]) => ({ cells: [tell(`paper.care.step.${id}`), sign, means] })),
  }
}

function keeping(fibres: readonly Fibre[], tell: Teller): string[] {
  const moths = fibres.includes('wool') || fibres.includes('silk')
  return (['air', moths ? 'moth' : 'fold', 'mend'] as const).map((id) => tell(`paper.care.keep.${id}`))
}
