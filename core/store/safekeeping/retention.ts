const HOUR = 3_600_000
const DAY = 24 * HOUR
/** For how long every hour, and then every day, has a backup of its own. */
const HOURLY_FOR = DAY
const DAILY_FOR = 31 * DAY

/**
 * Which backups are kept: the newest of every hour for a day, of every day for a month, of every month for ever; the newest
 * of all whatever it is, and those of a future that a clock set back has made.
 *
 * @param instants of the backups, UTC ISO 8601, in any order
 */
export function keptBackups(instants: readonly string[], now: string): Set<string> {
  const at = Date.parse(now)
  const newestFirst = [...instants].sort().reverse()
  const kept = new Set(newestFirst.slice(0, 1))
  const seen = new Set<string>()
  for (const instant of newestFirst) {
    const age = at - Date.parse(instant)
    const bucket = age < 0 ? instant : bucketOf(instant, age)
    if (!seen.has(bucket)) kept.add(instant)
    seen.add(bucket)
  }
  return kept
}

/** The stretch of time that one backup stands for. */
function bucketOf(instant: string, age: number): string {
  if (age < HOURLY_FOR) return instant.slice(0, 'YYYY-MM-DDTHH'.length)
  return instant.slice(0, (age < DAILY_FOR ? 'YYYY-MM-DD' : 'YYYY-MM').length)
}
