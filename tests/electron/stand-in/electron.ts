import { EventEmitter } from 'node:events'

/**
 * As much of the `electron` module as the shell touches, without windows: what main hands over is kept in
 * `world` for a test to look at and to attack, and messages pass between preload and main as copies.
 */
export type Frame = { url: string; parent: unknown } | null
type Handler = (event: { senderFrame: Frame }, ...given: unknown[]) => unknown

export const world = {
  schemes: [] as unknown[],
  serve: undefined as ((request: Request) => Promise<Response>) | undefined,
  permission: undefined as ((...given: unknown[]) => unknown) | undefined,
  permissionCheck: undefined as (() => boolean) | undefined,
  openHandler: undefined as ((details: { url: string }) => { action: string }) | undefined,
  handlers: new Map<string, Handler>(),
  windows: [] as BrowserWindow[],
  exposed: {} as Record<string, Record<string, (...given: unknown[]) => unknown>>,
  /** The frame that preload's messages come from. */
  frame: { url: 'ellwand://planner/', parent: null } as Frame,
  shown: [] as string[],
  errors: [] as string[],
  quits: 0,
}

const renderer = new EventEmitter()

class App extends EventEmitter {
  requestSingleInstanceLock = () => true
  whenReady = () => Promise.resolve()
  quit = () => {
    world.quits++
  }
}
export const app = new App()

export const protocol = {
  registerSchemesAsPrivileged: (schemes: unknown[]) => world.schemes.push(...schemes),
  handle: (_scheme: string, serve: (request: Request) => Promise<Response>) => {
    world.serve = serve
  },
}

export const session = {
  defaultSession: {
    setPermissionRequestHandler: (handler: (...given: unknown[]) => unknown) => {
      world.permission = handler
    },
    setPermissionCheckHandler: (handler: () => boolean) => {
      world.permissionCheck = handler
    },
  },
}

class WebContents extends EventEmitter {
  setWindowOpenHandler = (handler: (details: { url: string }) => { action: string }) => {
    world.openHandler = handler
  }
  send = (channel: string, ...given: unknown[]) => renderer.emit(channel, {}, ...structuredClone(given))
}

export class BrowserWindow extends EventEmitter {
  readonly options: Record<string, unknown>
  readonly webContents = new WebContents()
  focused = 0
  loaded = ''
  constructor(options: Record<string, unknown>) {
    super()
    this.options = options
    world.windows.push(this)
  }
  loadURL = async (url: string) => {
    this.loaded = url
  }
  isDestroyed = () => false
  isMinimized = () => true
  restore = () => {}
  focus = () => {
    this.focused++
  }
}

export const ipcMain = { handle: (channel: string, handler: Handler) => world.handlers.set(channel, handler) }

export const ipcRenderer = {
  invoke: async (channel: string, ...given: unknown[]) => {
    const handler = world.handlers.get(channel)
    if (handler === undefined) throw new Error(`nobody handles ${channel}`)
    return structuredClone(await handler({ senderFrame: world.frame }, ...structuredClone(given)))
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
}
export const shell = {
  openPath: async (path: string) => {
    world.shown.push(path)
    return ''
  },
  showItemInFolder: (path: string) => {
    world.shown.push(path)
  },
}
export const Menu = { buildFromTemplate: (template: unknown) => template, setApplicationMenu: () => {} }
