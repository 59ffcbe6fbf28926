import { join, sep } from 'node:path'
import { pathToFileURL } from 'node:url'
import { app, type BrowserWindow, dialog, protocol, session } from 'electron'
import { watchPage, watchShell } from './faults.ts'
import { listen } from './listen.ts'
import { type Log, openLog } from './log.ts'
import { goIn, setMenu } from './menu.ts'
import { ORIGIN, SCHEME } from './origin.ts'
import { papersOf } from './papers.ts'
import { dataFolder } from './places.ts'
import { PAGE_HEADERS, screenFile } from './screen-files.ts'
import { type StoreHost, startStore } from './store-host.ts'
import { following, tellHere } from './tongue.ts'
import { wallIn } from './walls.ts'
import { newWindow } from './window.ts'

app.enableSandbox()
protocol.registerSchemesAsPrivileged([
  { scheme: SCHEME, privileges: { standard: true, secure: true, supportFetchAPI: true } },
])

if (app.requestSingleInstanceLock()) void open()
else app.quit()

async function open(): Promise<void> {
  const folder = ownFolder()
  if (folder === undefined) return app.quit()
  const log = openLog(join(folder, 'log'), app.getVersion(), () => new Date())
  watchShell(log)
  await app.whenReady()
  const thread = pathToFileURL(outside(join(import.meta.dirname, 'store-thread.js')))
  let menu = () => {}
  const store = following(startStore(folder, thread), () => menu())
  const entered = await store.enter('own')
  if (!entered.ok) {
    log.note(entered.error.code)
    dialog.showErrorBox(tellHere('shell.cannotOpen'), entered.error.message)
    await store.close()
    return app.quit()
  }
  protocol.handle(SCHEME, serve)
  wallIn(session.defaultSession)
  await openWindow(newWindow(folder), store, log, (set) => {
    menu = set
    set()
  })
}

async function openWindow(
  window: BrowserWindow,
  store: StoreHost,
  log: Log,
  keepMenu: (set: () => void) => void,
): Promise<void> {
  const load = async () => {
    await window.loadURL(`${ORIGIN}/`).catch((error: unknown) => {
      if (!window.isDestroyed()) throw error
    })
  }
  const papers = papersOf(store, window)
  listen(store, papers, window, log)
  watchPage(window, log, () => void load())
  const saveLastPaper = async () => {
    const last = papers.last()
    const saved = last === undefined ? undefined : await papers.save(last)
    if (saved?.ok === false) dialog.showErrorBox(tellHere('shell.save.title'), saved.error.message)
  }
  keepMenu(() =>
    setMenu({
      go: goIn(window),
      saveLastPaper: () => void saveLastPaper(),
      log: log.file,
      licences: app.isPackaged ? join(process.resourcesPath, 'licences.txt') : undefined,
    }),
  )
  app.on('second-instance', () => {
    if (window.isMinimized()) window.restore()
    window.focus()
  })
  app.on('window-all-closed', () => app.quit())
  closeBeforeQuitting(store)
  await load()
}

/** However the planner is left, its store is closed first. */
function closeBeforeQuitting(store: StoreHost): void {
  let closed = false
  app.on('will-quit', (event) => {
    if (closed) return
    event.preventDefault()
    void store.close().finally(() => {
      closed = true
      app.quit()
    })
  })
}

/** The maker's folder; where it cannot be made she is told. */
function ownFolder(): string | undefined {
  try {
    return dataFolder(process.env, process.platform)
  } catch {
    dialog.showErrorBox(tellHere('shell.cannotOpen'), tellHere('shell.folder.said'))
    return undefined
  }
}

/** A file that is packed beside the archive, because it is no longer read by this program's own means. */
const outside = (path: string): string => path.replace(`app.asar${sep}`, `app.asar.unpacked${sep}`)

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
