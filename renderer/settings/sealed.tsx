import { useRef, useState } from 'react'
import { ActForm } from '../parts/acts.tsx'
import { Button } from '../parts/button.tsx'
import { TextField } from '../parts/field.tsx'
import { sendFile } from '../parts/send-file.ts'
import { useHouse, useTell } from '../workroom.tsx'

/** How far something is, in a line that is read out. */
function useFar() {
  const tell = useTell()
  const [far, setFar] = useState('')
  return {
    hear: (done: number) => setFar(tell('safe.percent', { percent: Math.round(100 * done) })),
    line: <p role="status">{far}</p>,
  }
}

/** A passphrase lies about nowhere, not even until she comes back. */
function useSecret<K extends string>(first: Record<K, string>) {
  const [typed, setTyped] = useState(first)
  const field = (id: K) => ({
    value: typed[id],
    onChange: (text: string) => setTyped((before) => ({ ...before, [id]: text })),
  })
  return { typed, field }
}

/** A copy that only a passphrase opens, handed over as papers are. */
export function Seal({ close, onSealed }: { close: () => void; onSealed: (said: string) => void }) {
  const { workroom } = useHouse()
  const tell = useTell()
  const far = useFar()
  const { typed, field } = useSecret({ passphrase: '', again: '' })
  return (
    <ActForm
      label={tell('safe.seal')}
      keep={tell('safe.seal.keep')}
      close={close}
      work={async () => {
        if (typed.passphrase !== typed.again) throw new Error(tell('safe.seal.differ'))
        const { file } = await workroom.ask('backup.seal', { passphrase: typed.passphrase }, ({ done }) =>
          far.hear(done),
        )
        onSealed(tell('safe.seal.done', { path: file.path }))
        const shown = await workroom.bridge.paper(file.id)
        if (!shown.ok) throw new Error(shown.error.message)
      }}
    >
      <p className="quiet">{tell('safe.seal.about')}</p>
      <div className="columns">
        <TextField label={tell('safe.seal.passphrase')} type="password" required {...field('passphrase')} />
        <TextField label={tell('safe.seal.again')} type="password" required {...field('again')} />
      </div>
      {far.line}
    </ActForm>
  )
}

/** Opens a sealed copy among the others. */
export function Unseal({ close, onOpened }: { close: () => void; onOpened: (said: string) => void }) {
  const { workroom } = useHouse()
  const tell = useTell()
  const far = useFar()
  const [chosen, setChosen] = useState<File>()
  const input = useRef<HTMLInputElement>(null)
  const { typed, field } = useSecret({ passphrase: '' })
  return (
    <ActForm
      label={tell('safe.unseal')}
      keep={tell('safe.unseal.keep')}
      close={close}
      work={async () => {
        if (chosen === undefined) throw new Error(tell('safe.unseal.none'))
        await sendFile(workroom, chosen, far.hear)
        await workroom.ask('backup.unseal', { passphrase: typed.passphrase })
        onOpened(tell('safe.unseal.done'))
      }}
    >
      <p className="quiet">{tell('safe.unseal.about')}</p>
      <input
        ref={input}
        type="file"
        hidden
        accept=".sealed"
        onChange={(event) => setChosen(event.target.files?.[0])}
      />
      <div className="row">
        <Button onPress={() => input.current?.click()}>{tell('safe.unseal.file')}</Button>
        {chosen === undefined ? null : <span>{tell('safe.unseal.chosen', { name: chosen.name })}</span>}
      </div>
      <div className="columns">
        <TextField label={tell('safe.seal.passphrase')} type="password" required {...field('passphrase')} />
      </div>
      {far.line}
    </ActForm>
  )
}
