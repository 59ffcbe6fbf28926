import { useState } from 'react'
import type { InputOf, OutputOf } from '../../core/workroom.ts'
import { useDoing, useHouse } from '../workroom.tsx'
import type { Followed, Garment } from './logged.ts'

/** A stage of the work by its id. */
export type Stage = Garment['stages'][number]['stage']
/** What is ticked: one step, or all of a stage. */
export type Act = { stage: Stage; stepId?: string; name: string }
type Guard = NonNullable<InputOf<'stage.tick'>['anyway']>[number]
/** The last thing done here: what it was, and the steps it marked, which can be opened again. */
type Did = { act: Act; ids: string[]; undone: boolean }

/** Ticking the steps of a garment: what cutting asks first, what was done, and the way back. */
export function useTicking(garmentId: string, onTicked: (commission: Followed) => void) {
  const { workroom } = useHouse()
  const doing = useDoing()
  const [act, setAct] = useState<Act>()
  const [did, setDid] = useState<Did>()
  /** What she was warned of before cutting, and cuts all the same: each is asked once. */
  const [warned, setWarned] = useState<Guard[]>([])
  const mark = (on: Act, work: () => Promise<OutputOf<'stage.tick'>>, undone: boolean) => {
    setAct(on)
    return doing.run(async () => {
      const { commission, marked } = await work()
      setDid({ act: on, ids: marked, undone })
      setWarned([])
      onTicked(commission)
    })
  }
  const tick = (on: Act, anyway: Guard[]) => {
    setWarned(anyway)
    const { stage, stepId } = on
    return mark(
      on,
      () =>
        stepId === undefined
          ? workroom.ask('stage.tick', { garmentId, stage, anyway })
          : workroom.ask('step.tick', { id: stepId, anyway }),
      false,
    )
  }
  const untick = (on: Act) => {
    const { stage, stepId } = on
    return mark(
      on,
      () =>
        stepId === undefined
          ? workroom.ask('stage.untick', { garmentId, stage })
          : workroom.ask('step.untick', { id: stepId }),
      true,
    )
  }
  const field = doing.refused?.field
  const guard = field?.startsWith('anyway.') ? (field.slice('anyway.'.length) as Guard) : undefined
  return {
    ...{ busy: doing.busy, refused: doing.refused?.message, act, did, guard },
    mark: (on: Act, done: boolean) => void (done ? tick(on, []) : untick(on)),
    /** Goes on with what was asked for, in spite of what speaks against it. */
    anyway: () => act !== undefined && guard !== undefined && void tick(act, [...warned, guard]),
    /** Opens again just what was ticked last. */
    undo: () =>
      did !== undefined && void mark(did.act, () => workroom.ask('steps.untick', { ids: did.ids }), true),
  }
}
