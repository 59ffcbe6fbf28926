import { describe, expect, test } from 'vitest'
import { faultsOfLay } from '../../core/lay/check.ts'
import { layOf } from '../../core/lay/lay-of.ts'
import { PLAIN_ORDER } from '../../core/lay/types.ts'
import { searchStart } from '../../core/lay/wished-lay.ts'
import { searchInThreads } from '../../electron/lay-host.ts'
import { cornered, plainCloth, rectangle } from '../support/cloth.ts'

const pieces = [
  cornered(
    'wedge',
    [
      { x: 0, y: 0 },
      { x: 320, y: 0 },
      { x: 90, y: 700 },
      { x: 0, y: 700 },
    ],
    6,
  ),
  rectangle('panel', 410, 520, 5),
]
const cloth = plainCloth(1100)
const { layable, start } = searchStart(pieces, cloth, { cuttingGap: 0 }, PLAIN_ORDER)
const never = new AbortController().signal
const faults = (places: typeof start) => faultsOfLay(layOf(pieces, layable, places), pieces, cloth)

describe('threads that search for a short lay', () => {
  test('give the best of all of them', async () => {
    const told: number[] = []
    const limits = { threads: 2, seed: 1, limit: { sweeps: 200 }, signal: never }
    const found = await searchInThreads(layable, start, {
      ...limits,
      found: ({ length }) => told.push(length),
    })
    expect(found.ended).toBe('done')
    expect(found.places.length).toBeLessThanOrEqual(start.length)
    expect(found.places.length).toBe(Math.min(start.length, ...told))
    expect(faults(found.places)).toEqual([])
  })

  test('leave the best so far when they are stopped', async () => {
    const stop = new AbortController()
    const limits = { threads: 1, seed: 1, limit: { seconds: 600 }, signal: stop.signal }
    const found = await searchInThreads(layable, start, { ...limits, found: () => stop.abort() })
    expect(found.ended).toBe('stopped')
    expect(found.places.length).toBeLessThan(start.length)
    expect(faults(found.places)).toEqual([])
  })

  test('leave the lay they began with when they break down', async () => {
    const broken = { ...layable, strip: { ...layable.strip, outlines: [] } }
    const found = await searchInThreads(broken, start, {
      threads: 1,
      seed: 1,
      limit: { sweeps: 5 },
      signal: never,
    })
    expect(found).toMatchObject({ ended: 'broken', places: start })
  })

  test('are stopped before they begin when nobody wants them any more', async () => {
    const signal = AbortSignal.abort()
    const found = await searchInThreads(layable, start, {
      threads: 1,
      seed: 1,
      limit: { seconds: 60 },
      signal,
    })
    expect(found).toMatchObject({ ended: 'stopped', places: start })
  })
})
