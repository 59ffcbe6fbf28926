/** Leads to a part of the page that she is on: it comes to the top, and the keys go on from there. @param id of its heading */
export function leadTo(id: string): void {
  const found = document.getElementById(id)
  found?.scrollIntoView({ block: 'start' })
  found?.focus({ preventScroll: true })
}
