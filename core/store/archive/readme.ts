import { english } from '../../words/catalogue/english.ts'
import { type PhraseCode, phrase } from '../../words/phrase.ts'
import { type Reader, say } from '../../words/say.ts'
import { tableFile } from './header.ts'

/** What each file of an archive is, in plain words, for whoever opens it without the planner. */
export function readmeOf(tables: readonly string[], reader: Reader): string {
  const told = (code: PhraseCode) => say(phrase(code), reader)
  const about = (table: string) => {
    const code = `archive.table.${table}`
    return code in english ? told(code as PhraseCode) : ''
  }
  return [
    ...(['title', 'private', 'header', 'tables'] as const).map((part) => told(`archive.readme.${part}`)),
    tables.map((table) => `  ${tableFile(table)}\n    ${about(table)}`.trimEnd()).join('\n'),
    ...(['json', 'attachments', 'back'] as const).map((part) => told(`archive.readme.${part}`)),
  ]
    .join('\n\n')
    .concat('\n')
}
