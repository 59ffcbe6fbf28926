/** Minutes as a maker says them: `45 min`, `3 h 20`. Rounded to the minute. */
export function printMinutes(minutes: number): string {
  const whole = Math.round(minutes)
  const hours = Math.floor(whole / 60)
  const rest = whole - hours * 60
  return hours === 0
    ? `${rest} min`
    : rest === 0
      ? `${hours} h`
      : `${hours} h ${String(rest).padStart(2, '0')}`
}
