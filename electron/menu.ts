import { app, type BrowserWindow, Menu, type MenuItemConstructorOptions, shell } from 'electron'
import { keyOfPlace, menuKey } from '../core/words/keys.ts'
import { PLACES } from '../core/words/places.ts'
import { tellHere as tell } from './tongue.ts'

type Doing = {
  /** Goes to a room of the page. */
  go: (room: string) => void
  saveLastPaper: () => void
  log: string
  /** The licences of what is built in; undefined where it is not a package that runs. */
  licences: string | undefined
}

/** The menu of the system. There is nothing in it that would throw away what is half typed. */
export function setMenu(doing: Doing): void {
  Menu.setApplicationMenu(Menu.buildFromTemplate(menu(doing)))
}

function menu({ go, saveLastPaper, log, licences }: Doing): MenuItemConstructorOptions[] {
  const line: MenuItemConstructorOptions = { type: 'separator' }
  const mac = process.platform === 'darwin'
  return [
    ...(mac ? [{ role: 'appMenu' } as const] : []),
    {
      label: tell('shell.menu.file'),
      submenu: [
        { label: tell('shell.menu.newQuote'), accelerator: menuKey('new'), click: () => go('desk') },
        { label: tell('shell.menu.savePaper'), accelerator: menuKey('savePaper'), click: saveLastPaper },
        line,
        { role: mac ? 'close' : 'quit' },
      ],
    },
    { role: 'editMenu', label: tell('shell.menu.edit') },
    {
      label: tell('shell.menu.go'),
      submenu: PLACES.map((place, i) => ({
        label: tell(`screen.room.${place}`),
        accelerator: menuKey(keyOfPlace(i)),
        click: () => go(place),
      })),
    },
    {
      label: tell('shell.menu.view'),
      submenu: [
        { role: 'zoomIn', label: tell('shell.menu.bigger') },
        { role: 'zoomOut', label: tell('shell.menu.smaller') },
        { role: 'resetZoom', label: tell('shell.menu.usualSize') },
        line,
        { role: 'togglefullscreen' },
        ...(app.isPackaged ? [] : [{ role: 'toggleDevTools' } as const]),
      ],
    },
    { role: 'windowMenu', label: tell('shell.menu.window') },
    {
      role: 'help',
      label: tell('shell.menu.help'),
      submenu: [
        ...(licences === undefined
          ? []
          : [{ label: tell('shell.menu.licences'), click: () => void shell.openPath(licences) }]),
        { label: tell('shell.menu.log'), click: () => shell.showItemInFolder(log) },
      ],
    },
  ]
}

/** Has the page go to a room, as by its own links. */
export const goIn = (window: BrowserWindow) => (room: string) => {
  if (window.isDestroyed()) return
  window.webContents.send('ellwand:go', room)
  window.focus()
}
