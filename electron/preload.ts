import { contextBridge, ipcRenderer } from 'electron'

// All that the page can reach: requests by name, and news of its jobs.
contextBridge.exposeInMainWorld('ellwand', {
  ask: (name: unknown, payload: unknown) => ipcRenderer.invoke('ellwand:ask', name, payload),
  cancel: (job: unknown) => ipcRenderer.invoke('ellwand:cancel', job),
  enter: (which: unknown) => ipcRenderer.invoke('ellwand:enter', which),
  paper: (document: unknown) => ipcRenderer.invoke('ellwand:paper', document),
  listen: (hear: (event: unknown) => void) => {
    ipcRenderer.on('ellwand:event', (_event, news) => hear(news))
  },
})

// The system's menu goes to a room by the same addresses as the page's own links.
const { location } = globalThis as unknown as { location: { hash: string } }
ipcRenderer.on('ellwand:go', (_event, room: unknown) => {
  if (typeof room === 'string' && /^[a-z]+$/.test(room)) location.hash = `#/${room}`
})
