import { join } from 'node:path'
import { app, BrowserWindow, screen } from 'electron'
import { keepState, LEAST, placedOn, readState } from './window-state.ts'

/** The planner's window, where it was left. @param folder where the planner keeps its files */
export function newWindow(folder: string): BrowserWindow {
  const file = join(folder, 'window.json')
  const before = readState(file)
  const main = screen.getPrimaryDisplay()
  const others = screen.getAllDisplays().filter(({ id }) => id !== main.id)
  const window = new BrowserWindow({
    ...placedOn(
      [main, ...others].map(({ workArea }) => workArea),
      before.bounds,
    ),
    ...{ minWidth: LEAST.width, minHeight: LEAST.height },
    title: 'Ellwand',
    backgroundColor: '#efe6d6',
    webPreferences: {
      preload: join(import.meta.dirname, 'preload.cjs'),
      contextIsolation: true,
      sandbox: true,
      nodeIntegration: false,
      webviewTag: false,
      // The words that a spelling checker knows would be fetched from the net.
      spellcheck: false,
      devTools: !app.isPackaged,
    },
  })
  if (before.maximized) window.maximize()
  window.on('close', () =>
    keepState(file, { bounds: window.getNormalBounds(), maximized: window.isMaximized() }),
  )
  return window
}
