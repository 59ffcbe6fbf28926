import { pieced } from '../draft/piecing.ts'
import type { Draft } from '../draft/types.ts'
import { usableWidth } from './cloth.ts'
import type { Cloth } from './types.ts'

/**
 * A draft as it is cut from this cloth: pieces that are wider than it are joined from narrower ones.
 *
 * @throws Refusal when the cloth's figures cannot be
 */
export const asCut = (draft: Draft, cloth: Cloth): Draft => pieced(draft, usableWidth(cloth))
