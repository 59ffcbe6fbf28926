import type { Draft, Step } from '../draft/types.ts'
import { minutesOf, sumMinutes } from './minutes.ts'
import { OPERATION } from './operations.ts'
import { SPREAD } from './parameters.ts'
import { hemRows, seamRows } from './rows.ts'
import { skillOf } from './stitches.ts'
import { threadUse } from './thread-use.ts'
import {
  type FinishPlan,
  type Minutes,
  type Row,
  type Sewing,
  SKILLS,
  type Skill,
  type StepTime,
  type ThreadRules,
} from './types.ts'

/**
 * The sewing of a draft under a finish plan: every row of stitches with its thread and time, the time of
 * every step, and the thread in all.
 *
 * @param thickness of one layer of the cloth, mm
 */
export function sew(
  { seams, hems, steps }: Pick<Draft, 'seams' | 'hems' | 'steps'>,
  plan: FinishPlan,
  thickness: number,
  rules: ThreadRules,
): Sewing {
  const seamOf = new Map(seams.map((seam) => [seam.id, seam]))
  const hemOf = new Map(hems.map((hem) => [hem.id, hem]))
  const rows = steps.flatMap((step) => [
    ...step.seams.flatMap((id) => seamRows(step.id, known(seamOf, id), plan, thickness)),
    ...step.hems.flatMap((id) => hemRows(step.id, known(hemOf, id), plan, thickness)),
  ])
  const times = steps.map((step) =>
    stepTime(
      step,
      rows.filter((row) => row.step === step.id),
    ),
  )
  return {
    rows,
    steps: times,
    threads: threadUse(rows, rules),
    total: sumMinutes(times.map(({ total }) => total)),
    bySkill: bySkill(times.flatMap((time) => SKILLS.map((skill) => [skill, time.bySkill[skill]] as const))),
  }
}

function stepTime({ id, stage, operations }: Step, rows: readonly Row[]): StepTime {
  const work = operations.map(({ operation, quantity }) => {
    const { minutes, skill } = OPERATION[operation]
    const mean = minutes * quantity
    return [skill, minutesOf(mean, mean * SPREAD.operation)] as const
  })
  const parts = [...rows.map((row) => [skillOf(row.stitch), row.minutes] as const), ...work]
  return { step: id, stage, bySkill: bySkill(parts), total: sumMinutes(parts.map(([, time]) => time)) }
}

function bySkill(parts: readonly (readonly [Skill, Minutes | undefined])[]): Partial<Record<Skill, Minutes>> {
  const sums: Partial<Record<Skill, Minutes>> = {}
  for (const skill of SKILLS) {
    const times = parts.flatMap(([of, time]) => (of === skill && time !== undefined ? [time] : []))
    if (times.length > 0) sums[skill] = sumMinutes(times)
  }
  return sums
}

function known<T>(by: ReadonlyMap<string, T>, id: string): T {
  const found = by.get(id)
  if (found === undefined) throw new Error(`a step sews ${id}, which the draft does not have`)
  return found
}
