import { describe, expect, it } from 'vitest'
import { flameOf, saidOfCloths } from '../../core/lay/flame.ts'
import { phrase } from '../../core/words/phrase.ts'
import { say } from '../../core/words/say.ts'

const KEEP = 'Keep sleeves and hems away from open flame.'

describe('what is said of flame', () => {
  it.each([
    [['linen'], `Linen burns fast. ${KEEP}`],
    [['wool'], `Wool is slow to catch fire, but smoulders and burns. ${KEEP}`],
    [
      ['wool', 'linen', 'linen'],
      `Linen burns fast. Wool is slow to catch fire, but smoulders and burns. ${KEEP}`,
    ],
    [
      ['55 % wool, 45 % polyester'],
      `Wool is slow to catch fire, but smoulders and burns. Synthetics melt on the skin. ${KEEP}`,
    ],
    [['nylon'], `Synthetics melt on the skin. ${KEEP}`],
    [[''], `Cloth of unknown fibre may burn fast or melt on the skin. ${KEEP}`],
    [[], `Cloth of unknown fibre may burn fast or melt on the skin. ${KEEP}`],
  ])('of %j is of these fibres alone', (cloths, sentence) => {
    expect(say(flameOf(cloths))).toBe(sentence)
  })

  it('leaves the other cautions as they are, in their order', () => {
    const others = [phrase('draft.caution.trailing'), phrase('draft.caution.pinned')] as const
    const said = saidOfCloths([others[0], phrase('draft.caution.flame'), others[1]], ['silk'])
    expect(said).toEqual([others[0], flameOf(['silk']), others[1]])
  })
})
