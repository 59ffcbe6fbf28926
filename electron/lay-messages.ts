import type { Manner, Places, Strip } from '../core/workroom.ts'

/** What a thread that searches for a short lay begins with. It stops by the clock or by a number of sweeps. */
export type LayTask = {
  strip: Strip
  manner: Manner
  /** A lay that can be cut. */
  start: Places
  seed: number
  limit: { seconds: number } | { sweeps: number }
}

/** What it tells: every shorter lay, and at last what it took. */
export type FromLay =
  | { kind: 'found'; places: Places }
  | { kind: 'done'; places: Places; sweeps: number; evaluations: number }
