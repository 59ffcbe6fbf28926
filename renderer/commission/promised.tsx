import { say } from '../../core/words/say.ts'
import type { OutputOf } from '../../core/workroom.ts'
import { Button } from '../parts/button.tsx'
import { Refusal } from '../parts/refusal.tsx'
import { addressOf } from '../router.ts'
import { useDoing, useHouse, useQuery, useTell } from '../workroom.tsx'
import { clothOf } from './holds.tsx'

type Props = { garmentId: string; name: string; open: boolean; cut: boolean }

/** Which length of the shelf is promised to a garment or was cut for it, and if none, which would serve. */
export function Promised({ garmentId, name, open, cut }: Props) {
  const { workroom } = useHouse()
  const tell = useTell()
  const doing = useDoing()
  const stock = useQuery('stock.list', { used: true })
  const lengths = stock.value?.lengths ?? []
  const act = (request: 'stock.reserve' | 'stock.release', id: string) =>
    doing.run(() => workroom.ask(request, { id, garmentId })).then(stock.reload)
  const of = (all: readonly { garmentId: string; mm: number }[]) =>
    all.find((one) => one.garmentId === garmentId)?.mm ?? 0
  const held = lengths.filter(({ reservedFor }) => of(reservedFor) > 0)
  const taken = lengths.filter(({ usedBy }) => of(usedBy) > 0)
  if (stock.value === undefined) return <Refusal sentence={stock.refused} />
  const wanting = open && !cut && held.length === 0 && taken.length === 0
  if (!wanting && held.length === 0 && taken.length === 0) return null
  return (
    <div className="shelf">
      <strong id={clothOf(garmentId)} tabIndex={-1}>
        {tell('life.promised.title')}
      </strong>
      {taken.map(({ id, cloth, usedBy }) => (
        <p key={id}>{tell('life.promised.cut', { length: { mm: of(usedBy) }, cloth })}</p>
      ))}
      {held.map((length) => (
        <div key={length.id} className="between">
          <p>{tell(...heldWords(length, of(length.reservedFor)))}</p>
          {open ? (
            <Button
              busy={doing.busy}
              label={tell('life.doing', { doing: tell('life.promised.letGo'), what: name })}
              onPress={() => void act('stock.release', length.id)}
            >
              {tell('life.promised.letGo')}
            </Button>
          ) : null}
        </div>
      ))}
      {wanting ? (
        <WouldServe
          {...{ garmentId, lengths }}
          busy={doing.busy}
          onPromise={(id) => void act('stock.reserve', id)}
        />
      ) : null}
      <Refusal sentence={doing.refused?.message} />
    </div>
  )
}

/** Where cloth that is set aside lies, or when it comes. @param mm how much of it */
function heldWords(
  { cloth, place, arrivedDay, expectedDay }: OutputOf<'stock.list'>['lengths'][number],
  mm: number,
): Parameters<ReturnType<typeof useTell>> {
  const length = { mm }
  if (arrivedDay !== null)
    return place === ''
      ? ['life.promised.held', { length, cloth }]
      : ['life.promised.heldAt', { length, cloth, place }]
  return expectedDay === null
    ? ['life.promised.comingNoDay', { length, cloth }]
    : ['life.promised.coming', { length, cloth, day: { date: expectedDay } }]
}

/** Which length would serve, where it lies or when it comes, and what it takes of it. */
function offerWords(
  known: Lengths[number] | undefined,
  takes: { takes: { mm: number }; leaves: { mm: number } },
): Parameters<ReturnType<typeof useTell>> {
  const { place = '', arrivedDay, expectedDay = null } = known ?? {}
  const said = { ...takes, length: { mm: known?.length ?? 0 } }
  if (arrivedDay === null)
    return expectedDay === null
      ? ['life.promised.offerComing', said]
      : ['life.promised.offerUntil', { ...said, day: { date: expectedDay } }]
  return place === '' ? ['life.promised.offer', said] : ['life.promised.offerAt', { ...said, place }]
}

type Lengths = OutputOf<'stock.list'>['lengths']

function WouldServe({
  garmentId,
  lengths,
  busy,
  onPromise,
}: {
  garmentId: string
  lengths: Lengths
  busy: boolean
  onPromise: (id: string) => void
}) {
  const { reader } = useHouse()
  const tell = useTell()
  const { value, refused } = useQuery('stock.offer', { garmentId })
  const known = (id: string) => lengths.find((one) => one.id === id)
  if (value === undefined) return <Refusal sentence={refused} />
  const { offers, others, buy } = value.offered
  return (
    <>
      {offers.map(({ lengthId, takes, leaves }) => {
        const words = tell(...offerWords(known(lengthId), { takes: { mm: takes }, leaves: { mm: leaves } }))
        return (
          <div key={lengthId} className="between">
            <p>{words}</p>
            <Button
              busy={busy}
              label={tell('life.doing', { doing: tell('life.promised.promise'), what: words })}
              onPress={() => onPromise(lengthId)}
            >
              {tell('life.promised.promise')}
            </Button>
          </div>
        )
      })}
      {offers.length > 0
        ? null
        : others.map(({ lengthId, why }) => (
            <p key={lengthId} className="quiet">
              {tell('life.promised.other', {
                ...{ length: { mm: known(lengthId)?.length ?? 0 }, why: say(why, reader) },
              })}
            </p>
          ))}
      {buy === undefined ? null : (
        <>
          <p>
            {tell('life.promised.buy', {
              ...{ washed: { mm: buy.washed }, needed: { mm: buy.needed }, toBuy: { mm: buy.toBuy } },
            })}
          </p>
          <p>
            <a className="button" href={addressOf('cloths', 'shopping')}>
              {tell('today.go.waits.toBuy')}
            </a>
          </p>
        </>
      )}
    </>
  )
}
