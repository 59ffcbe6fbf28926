import { app, type Session, type WebContents } from 'electron'
import { isOwn, isPage } from './origin.ts'

/**
 * Shuts every way out of the page, for whatever contents may ever come to be: no other address, window or frame, no
 * download, no permission, no device, and nothing fetched that is not the planner's own.
 */
export function wallIn(session: Session): void {
  session.setPermissionRequestHandler((_contents, _permission, answer) => answer(false))
  session.setPermissionCheckHandler(() => false)
  session.setDevicePermissionHandler(() => false)
  session.webRequest.onBeforeRequest(({ url }, go) => go({ cancel: !isOwn(url) && !WITHIN.test(url) }))
  session.on('will-download', (event) => event.preventDefault())
  app.on('web-contents-created', (_event, contents) => wallInContents(contents))
}

/** Addresses that never leave the program: pictures written out in the page, and the tools of those who build it. */
const WITHIN = /^(data|devtools):/

function wallInContents(contents: WebContents): void {
  const stay = (event: { preventDefault(): void; url: string }) => {
    if (!isPage(event.url)) event.preventDefault()
  }
  contents.on('will-navigate', stay)
  contents.on('will-redirect', stay)
  contents.on('will-frame-navigate', stay)
  contents.on('will-attach-webview', (event) => event.preventDefault())
  contents.setWindowOpenHandler(() => ({ action: 'deny' }))
}
