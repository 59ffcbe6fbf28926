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
