import { StrictMode } from 'react'
import { createRoot } from 'react-dom/client'
import './look/tokens.css'
import './look/ground.css'
import './look/controls.css'
import './look/day-input.css'
import './look/desk.css'
import './look/own.css'
import './look/times.css'
import './look/paces.css'
import './look/life.css'
import './look/cloths.css'
import './look/today.css'
import './look/head.css'
import './look/table.css'
import './look/help.css'
import './look/narrow.css'
import { Workroom } from './bridge/ask.ts'
import type { Bridge } from './bridge/bridge.ts'
import { browserBridge } from './bridge/browser.ts'
import { House } from './house.tsx'
import { machineLocale } from './parts/machine-locale.ts'
import { readerFor } from './reader.ts'
import { fetchRooms } from './rooms/later.tsx'
import { NoKey } from './rooms/no-key.tsx'

declare global {
  interface Window {
    /** What a window of its own gives the page; in a browser there is none. */
    ellwand?: Bridge
  }
}

const root = createRoot(document.getElementById('planner')!)
const first = await readerFor({ locale: machineLocale(), unit: 'cm' })
const bridge = window.ellwand ?? (await browserBridge())
root.render(
  <StrictMode>
    {bridge === undefined ? (
      <NoKey reader={first} />
    ) : (
      <House workroom={new Workroom(bridge)} first={first} />
    )}
  </StrictMode>,
)
if (bridge !== undefined) fetchRooms()
