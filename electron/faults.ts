import { app, type BrowserWindow, dialog } from 'electron'
import type { Log } from './log.ts'
import { tellHere } from './tongue.ts'

/** A page that breaks down so often is not opened again. */
const MOST_BREAKDOWNS = 3

/** Notes faults of the shell itself, and tells the maker of the first. What the store acknowledged is on disk already. */
export function watchShell(log: Log): void {
  let told = false
  const fault = (what: string) => (error: unknown) => {
    log.note(what, error)
    if (told) return
    told = true
    dialog.showErrorBox(tellHere('shell.fault.title'), tellHere('shell.fault.said', { file: log.file }))
  }
  process.on('uncaughtException', fault('uncaught'))
  process.on('unhandledRejection', fault('unhandled'))
  app.on('child-process-gone', (_event, { type, reason }) => log.note(`${type} ${reason}`))
}

/** Opens the page again when it breaks down, and says so; asks when it is stuck. */
export function watchPage(window: BrowserWindow, log: Log, reopen: () => void): void {
  let breakdowns = 0
  const { webContents } = window
  webContents.on('preload-error', (_event, _path, error) => log.note('preload', error))
  webContents.on('render-process-gone', (_event, { reason }) => {
    if (reason === 'clean-exit') return
    log.note(`page ${reason}`)
    breakdowns++
    const title = tellHere('shell.page.title')
    if (breakdowns > MOST_BREAKDOWNS) {
      dialog.showErrorBox(title, tellHere('shell.page.gone', { file: log.file }))
      window.close()
      return
    }
    reopen()
    dialog.showErrorBox(title, tellHere('shell.page.again'))
  })
  let asking = false
  window.on('unresponsive', () => {
    log.note('page stuck')
    if (asking) return
    asking = true
    const buttons = [tellHere('shell.page.wait'), tellHere('shell.page.reopen')]
    const message = tellHere('shell.page.stuck')
    void dialog.showMessageBox(window, { message, buttons, cancelId: 0 }).then(({ response }) => {
      asking = false
      if (response === 1) webContents.forcefullyCrashRenderer()
    })
  })
}
