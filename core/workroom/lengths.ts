import { z } from 'zod'
import { parseLength, printLength } from '../words/length.ts'
import { refusingAt } from '../words/refusal.ts'
import * as inputs from './inputs.ts'
import { request } from './request.ts'
import { settingsOf } from './settings.ts'

/** Reading and printing of lengths, for shells that do not do it themselves. */
export const lengthRequests = [
  request({
    name: 'length.read',
    kind: 'query',
    about: 'Reads a length as a maker writes it and gives it in mm.',
    input: z.strictObject({ text: z.string(), unit: inputs.unit.optional() }),
    run: ({ text, unit }, context) => ({
      mm: refusingAt('text', () => parseLength(text, unit ?? settingsOf(context).letterhead.unit)),
    }),
  }),
  request({
    name: 'length.print',
    kind: 'query',
    about: 'Prints a length in mm in the workroom’s unit, or another.',
    input: z.strictObject({ mm: z.number(), unit: inputs.unit.optional() }),
    run: ({ mm, unit }, context) => {
      const { letterhead } = settingsOf(context)
      return { text: printLength(mm, unit ?? letterhead.unit, letterhead.locale) }
    },
  }),
]
