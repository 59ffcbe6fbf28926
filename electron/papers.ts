import { copyFile, rename, rm } from 'node:fs/promises'
import { extname, join } from 'node:path'
import { app, type BrowserWindow, dialog, shell } from 'electron'
import { phrase } from '../core/words/phrase.ts'
import type { Answer } from '../core/workroom.ts'
import type { StoreHost } from './store-host.ts'
import { sayHere, tellHere } from './tongue.ts'

/** Shows and saves kept papers. Paths stay on this side; the page names a paper and hears whether it was done. */
export type Papers = {
  show(document: string): Promise<Answer>
  save(document: string): Promise<Answer>
  /** The paper shown last, if there was one. */
  last(): string | undefined
}

/** What a program of the system is asked to open: nothing that it could run. */
const SHOWN = ['.pdf', '.svg']

/** Papers for one window. A dialog that is closed again is no refusal: nothing was saved, and that is the answer. */
export function papersOf(store: StoreHost, window: BrowserWindow): Papers {
  let last: string | undefined
  const save = async (document: string): Promise<Answer> => {
    const found = await store.paper(document)
    if (!found.ok) return found
    const { path, name } = found.result
    const { canceled, filePath } = await dialog.showSaveDialog(window, {
      title: tellHere('shell.save.title'),
      defaultPath: join(app.getPath('documents'), fileName(name)),
      properties: ['createDirectory', 'showOverwriteConfirmation'],
    })
    if (canceled || filePath === '') return { ok: true, result: { saved: false } }
    try {
      await copyWhole(path, filePath)
    } catch {
      return refused('refusal.shell.notSaved')
    }
    return { ok: true, result: { saved: true } }
  }
  const show = async (document: string): Promise<Answer> => {
    const found = await store.paper(document)
    if (!found.ok) return found
    last = document
    if (!SHOWN.includes(extname(found.result.path))) return save(document)
    const failed = await shell.openPath(found.result.path)
    return failed === '' ? { ok: true, result: {} } : refused('refusal.shell.noViewer')
  }
  return { show, save, last: () => last }
}

/** A name that every system takes for a file and not for a folder, a device or a hidden file. */
export const fileName = (name: string): string =>
  name
    .normalize('NFC')
    .replace(/[\p{Cc}<>:"/\\|?*]/gu, '-')
    .replace(/^[.\s]+|[.\s]+$/g, '')
    .replace(/^(con|prn|aux|nul|com\d|lpt\d)(?=\.|$)/i, '_$1')
    .slice(0, 120) || 'paper'

/** All of a file or nothing, so that no half of a paper is taken for a paper. */
async function copyWhole(from: string, to: string): Promise<void> {
  const part = `${to}.part`
  try {
    await copyFile(from, part)
    await rename(part, to)
  } catch (error) {
    await rm(part, { force: true })
    throw error
  }
}

function refused(code: 'refusal.shell.notSaved' | 'refusal.shell.noViewer'): Answer {
  const sentence = phrase(code)
  return { ok: false, error: { code: sentence.code, message: sayHere(sentence) } }
}
