import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { z } from 'zod'
import { ownConstruction } from '../core/workroom/own-constructions.ts'

/** `npm run schema`: writes the published schema of a construction of one's own from the one it is read by. */
const file = join(import.meta.dirname, 'construction.schema.json')
writeFileSync(file, `${JSON.stringify(z.toJSONSchema(ownConstruction, { io: 'input' }), null, 2)}\n`)
console.log(file)
