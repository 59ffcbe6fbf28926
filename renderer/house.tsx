import { type ReactNode, useState } from 'react'
import { keyOfPlace } from '../core/words/keys.ts'
import { PLACES, whereIs } from '../core/words/places.ts'
import type { Reader } from '../core/words/say.ts'
import type { Workroom } from './bridge/ask.ts'
import { Find } from './find/find.tsx'
import { AtWork } from './head/at-work.tsx'
import { Doing } from './head/doing.tsx'
import { Gone } from './head/gone.tsx'
import { heardKey, useKeyNames } from './head/keys.tsx'
import { Button } from './parts/button.tsx'
import { Desk } from './rooms/desk.tsx'
import { FirstStart } from './rooms/first-start.tsx'
import {
  Bin,
  Books,
  Client,
  Clients,
  Cloths,
  Commission,
  Commissions,
  Damaged,
  Own,
  Plan,
  Quote,
  Quotes,
  SavedStrip,
  Shopping,
  Table,
  Times,
  WhatItCameTo,
  WorkroomSettings,
} from './rooms/later.tsx'
import { Today } from './rooms/today.tsx'
import { addressOf, type Place, usePlace } from './router.ts'
import { keptAsAtHome } from './settings/sample.ts'
import { TimerProvider } from './today/running.tsx'
import { TimerStrip } from './today/timer-strip.tsx'
import { UndoProvider, useUndoing } from './undo/undoing.tsx'
import { HouseProvider, useHouse, useQuery, useTell } from './workroom.tsx'

/** The planner: its head with the rooms, and the room the maker is in. */
export function House({ workroom, first }: { workroom: Workroom; first: Reader }) {
  return (
    <HouseProvider workroom={workroom} first={first}>
      <UndoProvider>
        <Gone />
        <Rooms />
      </UndoProvider>
    </HouseProvider>
  )
}

function Rooms() {
  const { workroom, refresh, kept } = useHouse()
  const { turn: undone, forget } = useUndoing()
  const tell = useTell()
  const keyOf = useKeyNames()
  const place = usePlace()
  const { value: house, reload } = useQuery('workroom.describe', {})
  const { value: book, reload: lookAgain } = useQuery('damaged.describe', {})
  const [looking, setLooking] = useState(false)
  if (house === undefined || book === undefined) return null
  const again = () => {
    refresh()
    reload()
    lookAgain()
    setLooking(false)
  }
  if (book.damaged !== null && !looking)
    return (
      <Damaged
        {...{ ...book.damaged, sample: house.kind === 'sample' }}
        onLook={() => setLooking(true)}
        onMended={again}
      />
    )
  if (house.kind === 'new') return <FirstStart onBegun={again} />
  const leave = async () => {
    await workroom.bridge.enter('own')
    keptAsAtHome(kept)
    forget()
    location.hash = ''
    again()
  }
  if (place.room === 'table' && place.id !== undefined)
    return (
      <TimerProvider key={house.kind}>
        <Table commissionId={place.id} garmentId={place.query.get('garment') ?? undefined} />
      </TimerProvider>
    )
  const path = place.id === undefined ? place.room : `${place.room}/${place.id}`
  const here = whereIs(path).place
  return (
    <TimerProvider key={house.kind}>
      <header className="head">
        <p className="head-name" title={house.name}>
          <span>{house.name}</span>
          {house.kind === 'sample' ? <small>{tell('screen.sample')}</small> : null}
        </p>
        <nav className="rooms" aria-label={tell('screen.rooms')}>
          {PLACES.map((room, i) => (
            <a
              key={room}
              href={addressOf(room)}
              title={keyOf(keyOfPlace(i))}
              {...heardKey(keyOfPlace(i))}
              {...(room === here ? { 'aria-current': 'page' as const } : {})}
            >
              {tell(`screen.room.${room}`)}
            </a>
          ))}
        </nav>
        <Find />
      </header>
      {book.damaged === null ? null : <SavedStrip onBack={() => setLooking(false)} />}
      <Doing path={path}>
        {house.kind === 'sample' ? (
          <Button onPress={() => void leave()}>{tell('screen.leaveSample')}</Button>
        ) : null}
      </Doing>
      <AtWork />
      <TimerStrip />
      {/* Opened anew once something was undone, for it may show what is not there any more. */}
      <main key={undone}>{path === 'workroom' ? <WorkroomSettings onKept={again} /> : roomAt(place)}</main>
    </TimerProvider>
  )
}

function roomAt({ room, id, query }: Place): ReactNode {
  switch (room) {
    case 'today':
      return id === 'bin' ? <Bin /> : <Today />
    case 'clients':
      return id === undefined ? <Clients /> : <Client key={id} id={id} />
    case 'cloths':
      return id === 'shopping' ? <Shopping /> : <Cloths />
    case 'quotes':
      return id === undefined ? <Quotes /> : <Quote key={id} id={id} />
    case 'commissions':
      if (id === 'accounts') return <WhatItCameTo />
      if (id === 'books') return <Books />
      if (id === 'plan') return <Plan />
      return id === undefined ? (
        <Commissions />
      ) : (
        <Commission key={`${id}?${query}`} id={id} time={query.get('time') ?? undefined} />
      )
    case 'workroom':
      return <Times />
    case 'own':
      return <Own key={id ?? 'new'} family={id} />
    default:
      return (
        <Desk
          key={query.toString()}
          wearer={query.get('wearer') ?? undefined}
          garment={query.get('garment') ?? undefined}
          cloth={query.get('cloth') ?? undefined}
        />
      )
  }
}
