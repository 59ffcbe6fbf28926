/** Monday is 1 (ECMA-402, Intl Locale Info). */
type WeekInfo = { firstDay: number }

/** The day on which weeks begin in a region: Monday is 0, Sunday 6; Monday where nothing is known of it. */
export function firstWeekday(locale: string): number {
  // Older engines have the same as a property.
  const known = new Intl.Locale(locale) as Intl.Locale & { getWeekInfo?: () => WeekInfo; weekInfo?: WeekInfo }
  return (known.getWeekInfo?.() ?? known.weekInfo ?? { firstDay: 1 }).firstDay - 1
}
