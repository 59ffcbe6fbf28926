import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import {
  app,
  BrowserWindow,
  dialog,
  ipcMain,
  Menu,
  type MenuItemConstructorOptions,
  protocol,
  session,
  shell,
} from 'electron'
import { phrase } from '../core/words/phrase.ts'
import { say } from '../core/words/say.ts'
import { dataFolder } from './places.ts'
import { PAGE_HEADERS, screenFile } from './screen-files.ts'
import { type StoreHost, startStore } from './store-host.ts'

/** Pages of the planner, and nothing else in the world, have this origin. */
export const ORIGIN = 'ellwand://planner'

protocol.registerSchemesAsPrivileged([
  { scheme: 'ellwand', privileges: { standard: true, secure: true, supportFetchAPI: true } },
])

if (app.requestSingleInstanceLock()) void open()
else app.quit()

async function open(): Promise<void> {
  await app.whenReady()
  const store = startStore(
    dataFolder(process.env, process.platform),
    pathToFileURL(join(import.meta.dirname, 'store-thread.js')),
  )
  const entered = await store.enter('own')
  if (!entered.ok) {
    dialog.showErrorBox(say(phrase('shell.cannotOpen')), entered.error.message)
    await store.close()
    return app.quit()
  }
  protocol.handle('ellwand', serve)
  session.defaultSession.setPermissionRequestHandler((_contents, _permission, answer) => answer(false))
  session.defaultSession.setPermissionCheckHandler(() => false)
  Menu.setApplicationMenu(Menu.buildFromTemplate(menu()))
  const window = newWindow()
  listen(store, window)
  app.on('second-instance', () => {
    if (window.isMinimized()) window.restore()
    window.focus()
  })
  app.on('window-all-closed', () => {
    void store.close().then(() => app.quit())
  })
  await window.loadURL(`${ORIGIN}/`)
}

/** A file of the screen, by the planner's own scheme. */
async function serve(request: Request): Promise<Response> {
  const url = new URL(request.url)
  const file =
    url.host === 'planner'
      ? await screenFile(join(import.meta.dirname, '../renderer'), url.pathname)
      : undefined
  if (file === undefined) return new Response('404', { status: 404, headers: PAGE_HEADERS })
  return new Response(file.bytes, { headers: { ...PAGE_HEADERS, 'Content-Type': file.type } })
}

function newWindow(): BrowserWindow {
  const window = new BrowserWindow({
    width: 1280,
    height: 800,
    minWidth: 900,
    minHeight: 600,
    title: 'Ellwand',
    backgroundColor: '#efe6d6',
    webPreferences: {
      preload: join(import.meta.dirname, 'preload.cjs'),
      contextIsolation: true,
      sandbox: true,
      nodeIntegration: false,
      webviewTag: false,
    },
  })
  const { webContents } = window
  const stay = (event: { preventDefault(): void }, url: string) => {
    if (!isOwn(url)) event.preventDefault()
  }
  webContents.on('will-navigate', (event) => stay(event, event.url))
  webContents.on('will-redirect', (event) => stay(event, event.url))
  webContents.on('will-frame-navigate', (event) => stay(event, event.url))
  webContents.on('will-attach-webview', (event) => event.preventDefault())
  webContents.setWindowOpenHandler(() => ({ action: 'deny' }))
  return window
}

const isOwn = (url: string): boolean => url === ORIGIN || url.startsWith(`${ORIGIN}/`)

type Sender = { senderFrame: { url: string; parent: unknown } | null }

/** Answers the page of this window, and no frame within it or page elsewhere. */
function listen(store: StoreHost, window: BrowserWindow): void {
  const guarded = (channel: string, answer: (...given: unknown[]) => unknown) =>
    ipcMain.handle(channel, (event: Sender, ...given: unknown[]) => {
      const { senderFrame } = event
      if (senderFrame === null || senderFrame.parent !== null || !isOwn(senderFrame.url)) {
        throw new Error(`${channel} was called from outside the planner`)
      }
      return answer(...given)
    })
  const text = (value: unknown): string => (typeof value === 'string' ? value : '')
  guarded('ellwand:ask', (name, payload) => store.ask(text(name), payload ?? {}))
  guarded('ellwand:cancel', (job) => store.cancel(text(job)))
  guarded('ellwand:enter', (which) => store.enter(which === 'sample' ? 'sample' : 'own'))
  guarded('ellwand:paper', async (document) => {
    const found = await store.paper(text(document))
    if (!found.ok) return found
    // An archive is shown where it lies, for it is to be taken elsewhere.
    if (found.result.path.endsWith('.zip')) {
      shell.showItemInFolder(found.result.path)
      return { ok: true, result: {} }
    }
    const failed = await shell.openPath(found.result.path)
    if (failed === '') return { ok: true, result: {} }
    const sentence = phrase('refusal.shell.noViewer')
    return { ok: false, error: { code: sentence.code, message: say(sentence) } }
  })
  store.listen((event) => {
    if (!window.isDestroyed()) window.webContents.send('ellwand:event', event)
  })
}

function menu(): MenuItemConstructorOptions[] {
  const own: MenuItemConstructorOptions[] = process.platform === 'darwin' ? [{ role: 'appMenu' }] : []
  return [...own, { role: 'fileMenu' }, { role: 'editMenu' }, { role: 'viewMenu' }, { role: 'windowMenu' }]
}
