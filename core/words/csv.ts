/** Without it a spreadsheet reads the letters of names in the encoding of its own machine. */
export const BYTE_ORDER_MARK = '\uFEFF'

/**
 * Text that a spreadsheet would take for a formula gets an apostrophe before it: a customer's name must not reckon
 * (CWE-1236). Amounts never come through here, for their minus is meant.
 */
export const guarded = (text: string): string => (FORMULA.test(text) ? `'${text}` : text)

/** What a formula begins with, also in the wide letters of Chinese and Japanese keyboards. */
const FORMULA = /^[=+\-@\t\r\n＝＋－＠]/

/** RFC 4180, section 2, rules 5 to 7: a field with a comma, a quote or a line break stands in quotes. */
export const quoted = (field: string): string =>
  /[",\r\n]/.test(field) ? `"${field.replaceAll('"', '""')}"` : field

/** Records as RFC 4180 in UTF-8 with its mark. Texts are guarded by who gives them, for only she knows what is a number. */
export const csvOf = (records: readonly (readonly string[])[]): string =>
  BYTE_ORDER_MARK + records.map((fields) => `${fields.map(quoted).join(',')}\r\n`).join('')
