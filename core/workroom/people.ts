import { z } from 'zod'
import { SKILLS } from '../sew/types.ts'
import {
  getAbsence,
  getPerson,
  insertAbsence,
  insertPerson,
  listAbsences,
  listPeople,
  markAbsence,
  updatePerson,
} from '../store/bench-people.ts'
import { phrase } from '../words/phrase.ts'
import { Refusal } from '../words/refusal.ts'
import { recorded } from './history.ts'
import * as inputs from './inputs.ts'
import { type Context, request } from './request.ts'
import { settingsOf } from './settings.ts'

const fields = {
  name: inputs.named,
  skills: z.array(z.enum(SKILLS)).min(1).max(SKILLS.length),
  week: z.array(z.number().min(0).max(1440)).length(7).describe('minutes of each weekday, Monday first'),
  handCap: z
    .number()
    .min(10)
    .max(1440)
    .nullable()
    .default(null)
    .describe('minutes a day that a hand may sew'),
}

/** Who works here, on which days, and when nobody does. */
export const peopleRequests = [
  request({
    name: 'people.list',
    kind: 'query',
    about: 'Who works here with skills and hours of the week, and the days off.',
    input: z.strictObject({}),
    run: (_, context) => ({ people: peopleOf(context), away: listAbsences(context.store.db) }),
  }),
  request({
    name: 'person.add',
    kind: 'command',
    about: 'Enters somebody who works here.',
    input: z.strictObject(fields),
    run: (given, context) => {
      const row = { ...given, id: context.newId(), createdAt: context.now() }
      const person = insertPerson(context.store.db, row)
      recorded(context, 'person.add', 'person', person.id, null, person)
      return { person }
    },
  }),
  request({
    name: 'person.change',
    kind: 'command',
    about: 'Changes the hours or skills of somebody who works here.',
    input: z.strictObject({ id: inputs.id, revision: inputs.revision, person: z.strictObject(fields) }),
    run: ({ id, revision, person: given }, context) => {
      const before = getPerson(context.store.db, id)
      const person = updatePerson(context.store.db, before, revision, given)
      recorded(context, 'person.change', 'person', id, before, person)
      return { person }
    },
  }),
  request({
    name: 'person.retire',
    kind: 'command',
    about: 'Takes somebody off who does not work here any more.',
    input: z.strictObject({ id: inputs.id, revision: inputs.revision }),
    run: ({ id, revision }, context) => {
      const { db } = context.store
      const before = getPerson(db, id)
      if (listPeople(db).every((one) => one.id === id)) throw new Refusal(phrase('refusal.person.last'), 'id')
      const person = updatePerson(db, before, revision, { retiredAt: context.now() })
      recorded(context, 'person.retire', 'person', id, before, person)
      return { person }
    },
  }),
  request({
    name: 'away.add',
    kind: 'command',
    about: 'Enters days on which somebody, or nobody at all, works.',
    input: z.strictObject({
      personId: inputs.id.nullable().default(null).describe('everyone, if nobody is named'),
      from: inputs.day,
      to: inputs.day,
      note: inputs.line(200).default(''),
    }),
    run: (given, context) => {
      const { db } = context.store
      if (given.to < given.from) throw new Refusal(phrase('refusal.absence.order'), 'to')
      if (given.personId !== null) getPerson(db, given.personId, 'personId')
      const row = insertAbsence(db, { ...given, id: context.newId(), createdAt: context.now() })
      recorded(context, 'away.add', 'absence', row.id, null, row)
      return { away: row }
    },
  }),
  request({
    name: 'away.remove',
    kind: 'command',
    about: 'Takes days off back.',
    input: z.strictObject({ id: inputs.id }),
    run: ({ id }, context) => {
      const before = getAbsence(context.store.db, id)
      const away = markAbsence(context.store.db, id, context.now())
      recorded(context, 'away.remove', 'absence', id, before, away)
      return { away }
    },
  }),
]

/** Id of the maker herself while nobody has been entered. */
export const HERSELF = 'herself'

/** Who works here; while nobody is entered the maker alone, her weekly hours spread over Monday to Friday. */
export function peopleOf(context: Context) {
  const people = listPeople(context.store.db)
  if (people.length > 0) return people
  const { hoursPerWeek, letterhead } = settingsOf(context)
  const daily = (hoursPerWeek * 60) / 5
  return [
    {
      ...{ id: HERSELF, name: letterhead.name, skills: [...SKILLS], handCap: null, revision: 0 },
      week: [daily, daily, daily, daily, daily, 0, 0],
    },
  ]
}
