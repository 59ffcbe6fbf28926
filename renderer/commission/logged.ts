import { say } from '../../core/words/say.ts'
import type { OutputOf } from '../../core/workroom.ts'
import { useHouse, useTell } from '../workroom.tsx'

/** A commission as it is followed, one of its garments, and a time logged for it; minutes. */
export type Followed = OutputOf<'commission.get'>['commission']
export type Garment = Followed['garments'][number]
export type Time = OutputOf<'times.list'>['times'][number]

/** Minutes that were logged for just these steps. */
export function minutesOn(times: readonly Time[], stepIds: readonly string[]): number {
  const wanted = keyOf(stepIds)
  return times
    .filter((time) => time.removedAt === null && keyOf(time.stepIds) === wanted)
    .reduce((sum, { minutes }) => sum + minutes, 0)
}

/** Minutes that were logged for a step, alone or together with others. */
export const minutesOf = (times: readonly Time[], stepId: string): number =>
  times
    .filter((time) => time.removedAt === null && time.stepIds.includes(stepId))
    .reduce((sum, { minutes }) => sum + minutes, 0)

const keyOf = (ids: readonly string[]): string => [...ids].sort().join(' ')

/** How many steps of a garment no time was logged for, neither alone nor with others. */
export function stepsWithoutTime(times: readonly Time[], { steps }: Garment): number {
  const logged = new Set(
    times.filter(({ removedAt }) => removedAt === null).flatMap(({ stepIds }) => stepIds),
  )
  return steps.filter(({ id }) => !logged.has(id)).length
}

/** Names a garment and who wears it; where several are alike, by their number too. */
export function useGarmentNames({ garments }: Followed): (garment: Garment) => string {
  const { reader } = useHouse()
  const tell = useTell()
  const nameOf = ({ title, wearer }: Garment) =>
    tell('paper.garment.forWhom', { title: say(title, reader), wearer })
  return (garment) => {
    const alike = garments.filter((other) => nameOf(other) === nameOf(garment)).map(({ id }) => id)
    if (alike.length === 1) return nameOf(garment)
    const number = alike.indexOf(garment.id) + 1
    return tell('times.garment.oneOf', { garment: nameOf(garment), number })
  }
}

/** Names what a time was spent on: a whole stage by the stage, and the garment where there are several. */
export function useStepsOf(commission: Followed): (time: Time) => string {
  const { garments } = commission
  const nameOf = useGarmentNames(commission)
  const { reader } = useHouse()
  const tell = useTell()
  return ({ stepIds }) =>
    garments
      .flatMap((garment) => {
        const on = garment.steps.filter(({ id }) => stepIds.includes(id))
        if (on.length === 0) return []
        const whole = garment.stages.find(
          ({ stage, steps }) => steps > 1 && steps === on.length && on.every((step) => step.stage === stage),
        )
        const steps =
          whole === undefined
            ? on.map(({ name }) => say(name, reader)).join(', ')
            : tell('screen.commission.wholeStage', { stage: tell(`paper.stage.${whole.stage}`) })
        if (garments.length === 1) return [steps]
        return [tell('times.list.garment', { steps, garment: nameOf(garment) })]
      })
      .join(', ')
}
