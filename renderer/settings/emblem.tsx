import { useRef } from 'react'
import { Button } from '../parts/button.tsx'
import { canvasOf } from '../parts/canvas.ts'
import { Refusal } from '../parts/refusal.tsx'
import { useDoing, useHouse, useQuery, useTell } from '../workroom.tsx'

/** Longest side of a mark as it is kept, pixels: 60 mm at 400 dots an inch. */
const LONGEST = 945

/** The workroom's mark: what it is now, another in its place, or none. */
export function Mark({ revision, onKept }: { revision: number; onKept: () => void }) {
  const { workroom } = useHouse()
  const tell = useTell()
  const doing = useDoing()
  const file = useRef<HTMLInputElement>(null)
  const { value, reload } = useQuery('mark.get', {})
  const set = (from: () => Promise<string | null>) =>
    doing.run(async () => {
      await workroom.ask('mark.set', { revision, data: await from() })
      reload()
      onKept()
    })
  const taken = async (chosen: File) => {
    const data = await pngOf(chosen)
    if (data === undefined) throw new Error(tell('mark.unreadable', { name: chosen.name }))
    return data
  }
  return (
    <section className="sheet stack">
      <h2>{tell('mark.title')}</h2>
      <p className="quiet">{tell('mark.about')}</p>
      {value?.address ? <img className="mark-shown" src={value.address} alt={tell('mark.alt')} /> : null}
      {value?.address === null ? <p>{tell('mark.none')}</p> : null}
      <input
        ref={file}
        type="file"
        hidden
        accept="image/png,image/jpeg,image/webp"
        onChange={(event) => {
          const [chosen] = event.target.files ?? []
          event.target.value = ''
          if (chosen !== undefined) void set(() => taken(chosen))
        }}
      />
      <div className="row">
        <Button busy={doing.busy} onPress={() => file.current?.click()}>
          {tell('mark.choose')}
        </Button>
        {value?.address ? (
          <Button busy={doing.busy} onPress={() => void set(async () => null)}>
            {tell('mark.remove')}
          </Button>
        ) : null}
      </div>
      <Refusal sentence={doing.refused?.message} />
    </section>
  )
}

/** A picture as a PNG no larger than is printed, base64; undefined for what is no picture. */
const pngOf = async (file: File): Promise<string | undefined> =>
  (await canvasOf(file, LONGEST))?.toDataURL('image/png').replace(/^[^,]*,/, '')
