import { jobsOf, type ToMake } from '../plan/jobs.ts'
import type { Base } from '../plan/schedule/types.ts'
import type { ClothState } from '../plan/waits.ts'
import { garmentsOf, openCommissions, openStepsOf, stageCounts } from '../store/commissions.ts'
import { fittingsFrom } from '../store/fittings.ts'
import { addDays, type Day } from '../words/dates.ts'
import { absencesOf } from './days-off.ts'
import { paceOf } from './pace.ts'
import { peopleOf } from './people.ts'
import type { Context } from './request.ts'
import { today } from './settings.ts'
import { uncutWork } from './uncut.ts'

/** Everything a plan is made from: open steps, people, days off. */
export function baseOf(context: Context): Base {
  return {
    jobs: jobsOf(toMake(context), paceOf(context)),
    people: peopleOf(context),
    away: absencesOf(context),
    today: today(context),
  }
}

/** The garments of open work with the steps that are left, and what they wait for. */
function toMake(context: Context): ToMake[] {
  const { db } = context.store
  const commissions = new Map(openCommissions(db).map((row) => [row.id, row]))
  const garments = garmentsOf(db, [...commissions.keys()])
  const ids = garments.map(({ id }) => id)
  const steps = Map.groupBy(openStepsOf(db, ids), ({ garmentId }) => garmentId)
  const stages = Map.groupBy(stageCounts(db, ids), ({ garmentId }) => garmentId)
  const { cloths } = uncutWork({ commissions, garments, stages }, context)
  const fittings = fittingsFrom(db, today(context)).map(({ fitting }) => fitting)
  return garments.flatMap(({ id, commissionId }) => {
    const { dueDay, eventDay } = commissions.get(commissionId)!
    const fitting = fittings.find(
      (one) => one.garmentId === id || (one.garmentId === null && one.commissionId === commissionId),
    )
    return [
      {
        ...{ id, commission: commissionId, due: dueDay ?? eventDay },
        ...{ cloth: dayOfCloth(cloths.get(id), today(context)), fitting: fitting?.day ?? null },
        steps: steps.get(id) ?? [],
      },
    ]
  })
}

/** The day a garment's cloth is there, if that is not yet: what is not ordered is ordered today. */
function dayOfCloth(cloth: ClothState | undefined, from: Day): Day | null {
  if (cloth?.at === 'coming') return cloth.day
  if (cloth?.at === 'unpromised') return cloth.day ?? null
  return cloth?.at === 'toBuy' ? addDays(from, cloth.days) : null
}
