import { type BrowserWindow, type IpcMainInvokeEvent, ipcMain } from 'electron'
import type { Answer } from '../core/workroom.ts'
import type { Log } from './log.ts'
import { isPage } from './origin.ts'
import type { Papers } from './papers.ts'
import type { StoreHost } from './store-host.ts'

/** Answers the page of this window, and no frame within it, no page elsewhere and no other contents. */
export function listen(store: StoreHost, papers: Papers, window: BrowserWindow, log: Log): void {
  const guarded = (channel: string, answer: (...given: unknown[]) => Promise<Answer>) =>
    ipcMain.handle(channel, (event: IpcMainInvokeEvent, ...given: unknown[]) => {
      const { senderFrame, sender } = event
      const own = senderFrame !== null && senderFrame.parent === null && isPage(senderFrame.url)
      if (!own || sender !== window.webContents) {
        log.note(`${channel} from outside`)
        throw new Error(`${channel} was called from outside the planner`)
      }
      return answer(...given)
    })
  guarded('ellwand:ask', async (name, payload) => {
    const answered = await store.ask(text(name), payload ?? {})
    if (!answered.ok && FAULTS.includes(answered.error.code))
      log.note(`${answered.error.code} ${asked(name)}`)
    return answered
  })
  guarded('ellwand:cancel', (job) => store.cancel(text(job)))
  guarded('ellwand:enter', (which) => store.enter(which === 'sample' ? 'sample' : 'own'))
  guarded('ellwand:paper', (document) => papers.show(text(document)))
  store.listen((event) => {
    if (!window.isDestroyed()) window.webContents.send('ellwand:event', event)
  })
}

/** Refusals that are not the maker's doing. */
const FAULTS = ['refusal.shell.fault', 'refusal.shell.gone']

const text = (value: unknown): string => (typeof value === 'string' ? value : '')

/** The name of a request, where it looks like one: whatever else was asked for is nobody's to keep. */
const asked = (name: unknown): string =>
  /^[a-z]+\.[a-z]+$/i.test(text(name)) ? text(name).slice(0, 60) : 'odd'
