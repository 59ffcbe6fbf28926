import { EventEmitter } from 'node:events'
import type * as electron from 'electron'

/**
 * As much of the `electron` module as the shell touches, without windows: what main hands over is kept in
 * `world` for a test to look at and to attack, and messages pass between preload and main as copies.
 */
export type Frame = { url: string; parent: unknown } | null
type Handler = (event: { senderFrame: Frame; sender: unknown }, ...given: unknown[]) => unknown
type Rectangle = electron.Rectangle

export const world = {
  schemes: [] as electron.CustomScheme[],
  sandboxed: false,
  serve: undefined as ((request: Request) => Promise<Response>) | undefined,
  permission: undefined as Parameters<electron.Session['setPermissionRequestHandler']>[0] | undefined,
  permissionCheck: undefined as Parameters<electron.Session['setPermissionCheckHandler']>[0] | undefined,
  devices: undefined as Parameters<electron.Session['setDevicePermissionHandler']>[0] | undefined,
  fetching: undefined as
    | ((details: { url: string }, go: (answer: electron.CallbackResponse) => void) => void)
    | undefined,
  handlers: new Map<string, Handler>(),
  windows: [] as BrowserWindow[],
  exposed: {} as Record<string, Record<string, (...given: unknown[]) => unknown>>,
  /** The frame that preload's messages come from, and whether they come from the window's own contents. */
  frame: { url: 'ellwand://planner/', parent: null } as Frame,
  foreign: false,
  screens: [{ x: 0, y: 0, width: 1920, height: 1040 }] as Rectangle[],
  menu: [] as electron.MenuItemConstructorOptions[],
  shown: [] as string[],
  errors: [] as string[],
  asked: [] as string[],
  /** What the maker does at dialogs: the path she takes, and the button she presses. */
  saveTo: '',
  presses: 0,
  quits: 0,
}

const renderer = new EventEmitter()

class App extends EventEmitter {
  isPackaged = false
  requestSingleInstanceLock = () => true
  whenReady = () => Promise.resolve()
  enableSandbox = () => {
    world.sandboxed = true
  }
  getVersion = () => '0.0.0'
  getPath = () => '/documents'
  quit = () => {
    let prevented = false
    this.emit('will-quit', { preventDefault: () => (prevented = true) })
    if (!prevented) world.quits++
  }
}
export const app = new App()

export const protocol = {
  registerSchemesAsPrivileged: (schemes: electron.CustomScheme[]) => world.schemes.push(...schemes),
  handle: (_scheme: string, serve: (request: Request) => Promise<Response>) => {
    world.serve = serve
  },
}

class Session extends EventEmitter {
  setPermissionRequestHandler = (handler: typeof world.permission) => {
    world.permission = handler
  }
  setPermissionCheckHandler = (handler: typeof world.permissionCheck) => {
    world.permissionCheck = handler
  }
  setDevicePermissionHandler = (handler: typeof world.devices) => {
    world.devices = handler
  }
  webRequest = {
    onBeforeRequest: (handler: typeof world.fetching) => {
      world.fetching = handler
    },
  }
}
export const session = { defaultSession: new Session() }

export class WebContents extends EventEmitter {
  openHandler: ((details: { url: string }) => { action: string }) | undefined
  crashes = 0
  setWindowOpenHandler = (handler: (details: { url: string }) => { action: string }) => {
    this.openHandler = handler
  }
  send = (channel: string, ...given: unknown[]) => renderer.emit(channel, {}, ...structuredClone(given))
  forcefullyCrashRenderer = () => {
    this.crashes++
    this.emit('render-process-gone', {}, { reason: 'killed', exitCode: 9 })
  }
}

export class BrowserWindow extends EventEmitter {
  readonly options: electron.BrowserWindowConstructorOptions
  readonly webContents = new WebContents()
  focused = 0
  maximized = false
  closed = false
  bounds: Rectangle
  loads: string[] = []
  constructor(options: electron.BrowserWindowConstructorOptions) {
    super()
    this.options = options
    const { x = 0, y = 0, width = 800, height = 600 } = options
    this.bounds = { x, y, width, height }
    world.windows.push(this)
    app.emit('web-contents-created', {}, this.webContents)
  }
  loadURL = async (url: string) => {
    this.loads.push(url)
  }
  isDestroyed = () => this.closed
  isMinimized = () => true
  isMaximized = () => this.maximized
  maximize = () => {
    this.maximized = true
  }
  getNormalBounds = () => this.bounds
  restore = () => {}
  focus = () => {
    this.focused++
  }
  close = () => {
    this.emit('close', { preventDefault: () => {} })
    this.closed = true
    app.emit('window-all-closed')
  }
}

const display = (workArea: Rectangle, id: number) => ({ id, workArea })
export const screen = {
  getPrimaryDisplay: () => display(world.screens[0]!, 0),
  getAllDisplays: () => world.screens.map(display),
}

export const ipcMain = { handle: (channel: string, handler: Handler) => world.handlers.set(channel, handler) }

export const ipcRenderer = {
  invoke: async (channel: string, ...given: unknown[]) => {
    const handler = world.handlers.get(channel)
    if (handler === undefined) throw new Error(`nobody handles ${channel}`)
    const sender = world.foreign ? new WebContents() : world.windows[0]!.webContents
    return structuredClone(await handler({ senderFrame: world.frame, sender }, ...structuredClone(given)))
  },
  on: (channel: string, hear: (...given: unknown[]) => void) => renderer.on(channel, hear),
}

export const contextBridge = {
  exposeInMainWorld: (name: string, api: Record<string, (...given: unknown[]) => unknown>) => {
    world.exposed[name] = api
  },
}

export const dialog = {
  showErrorBox: (title: string, text: string) => world.errors.push(`${title}: ${text}`),
  showMessageBox: async (_window: BrowserWindow, { message }: electron.MessageBoxOptions) => {
    world.asked.push(message)
    return { response: world.presses, checkboxChecked: false }
  },
  showSaveDialog: async (_window: BrowserWindow, { defaultPath = '' }: electron.SaveDialogOptions) => {
    world.asked.push(defaultPath)
    return { canceled: world.saveTo === '', filePath: world.saveTo }
  },
}
export const shell = {
  openPath: async (path: string) => {
    world.shown.push(path)
    return ''
  },
  showItemInFolder: (path: string) => world.shown.push(path),
}
export const Menu = {
  buildFromTemplate: (template: electron.MenuItemConstructorOptions[]) => template,
  setApplicationMenu: (template: electron.MenuItemConstructorOptions[]) => {
    world.menu = template
  },
}
