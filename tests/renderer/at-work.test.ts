import { expect, test } from 'vitest'
import { english } from '../../core/words/catalogue/english.ts'
import { requests } from '../../core/workroom.ts'
import { Workroom } from '../../renderer/bridge/ask.ts'
import type { Bridge, JobNews } from '../../renderer/bridge/bridge.ts'

/** A bridge whose one job goes on until it is told otherwise. */
function slow() {
  let hear: (news: JobNews) => void = () => {}
  const cancelled: string[] = []
  const bridge = {
    ask: async () => ({ ok: true, result: { job: 'one' } }),
    cancel: async (job: string) => {
      cancelled.push(job)
      hear({
        job,
        answer: { ok: false, error: { code: 'refusal.shell.stopped', message: 'It was stopped.' } },
      })
      return { ok: true, result: {} }
    },
    listen: (given: (news: JobNews) => void) => {
      hear = given
    },
  } as unknown as Bridge
  return { workroom: new Workroom(bridge), tell: (news: JobNews) => hear(news), cancelled }
}

test('a job is told of while it is done, with how far it is, and can be stopped from there', async () => {
  const { workroom, tell, cancelled } = slow()
  let changes = 0
  const leave = workroom.hearRunning(() => changes++)
  const asked = workroom.ask('store.export', {}).catch((error: unknown) => error)
  await new Promise((next) => setTimeout(next, 0))
  expect(workroom.running()).toMatchObject([{ job: 'one', name: 'store.export', done: 0 }])
  expect(workroom.running()).toBe(workroom.running())
  tell({ job: 'one', progress: { done: 0.4, doing: 'export' } })
  expect(workroom.running()[0]!.done).toBe(0.4)
  workroom.running()[0]!.stop()
  expect(await asked).toMatchObject({ code: 'refusal.shell.stopped' })
  expect(cancelled).toEqual(['one'])
  expect(workroom.running()).toEqual([])
  expect(changes).toBe(3)
  leave()
})

test('every job has a name to be told of by', () => {
  const jobs = requests.filter(({ kind }) => kind === 'job').map(({ name }) => `jobs.${name}`)
  expect(jobs.length).toBeGreaterThan(15)
  expect(jobs.filter((code) => !(code in english))).toEqual([])
})
