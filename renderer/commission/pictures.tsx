import { useState } from 'react'
import { Button as AriaButton, FileTrigger } from 'react-aria-components'
import { ActForm, Acts } from '../parts/acts.tsx'
import { Button } from '../parts/button.tsx'
import { Refusal } from '../parts/refusal.tsx'
import { type Loaded, useDoing, useHouse, useQuery, useTell } from '../workroom.tsx'
import type { Kept } from './notes.tsx'
import { pictureOf } from './picture-file.ts'

type Picture = Kept['pictures'][number]
type Props = { commissionId: string; kept: Loaded<Kept> }

/** Reference pictures of a commission: small in a row, and the one at hand large below. */
export function Pictures({ commissionId, kept: { value, reload } }: Props) {
  const { workroom } = useHouse()
  const tell = useTell()
  const doing = useDoing()
  const [open, setOpen] = useState<string>()
  const pictures = value?.pictures ?? []
  const add = (files: FileList | null) =>
    doing
      .run(async () => {
        for (const file of files ?? [])
          await workroom.ask('picture.add', { commissionId, ...(await pictureOf(file)) })
      })
      // Of several files some may be kept before one is refused.
      .then(reload)
  const large = pictures.find(({ id }) => id === open)
  return (
    <section className="sheet stack">
      <h2>{tell('life.pictures')}</h2>
      {value !== undefined && pictures.length === 0 ? (
        <p className="quiet">{tell('life.pictures.none')}</p>
      ) : null}
      <div className="row">
        {pictures.map((picture) => (
          <Small
            key={picture.id}
            picture={picture}
            open={picture.id === open}
            onPress={() => setOpen(picture.id === open ? undefined : picture.id)}
          />
        ))}
      </div>
      {large === undefined ? null : (
        <Large
          key={large.id}
          picture={large}
          onClose={() => setOpen(undefined)}
          onRemoved={() => {
            setOpen(undefined)
            reload()
          }}
        />
      )}
      <Refusal sentence={doing.refused?.message} />
      <div>
        <FileTrigger
          allowsMultiple
          acceptedFileTypes={['image/png', 'image/jpeg', 'image/webp']}
          onSelect={(files) => void add(files)}
        >
          <Button busy={doing.busy}>{tell('life.picture.add')}</Button>
        </FileTrigger>
      </div>
    </section>
  )
}

function Small({ picture, open, onPress }: { picture: Picture; open: boolean; onPress: () => void }) {
  const tell = useTell()
  const { value } = useQuery('picture.get', { id: picture.id, small: true })
  return (
    <AriaButton
      className="thumbnail"
      aria-label={tell('life.picture.large', { name: picture.name })}
      aria-expanded={open}
      onPress={onPress}
    >
      {value === undefined ? null : <img src={value.address} alt="" />}
    </AriaButton>
  )
}

function Large({
  picture: { id, name },
  onClose,
  onRemoved,
}: {
  picture: Picture
  onClose: () => void
  onRemoved: () => void
}) {
  const { workroom } = useHouse()
  const tell = useTell()
  const { value, refused } = useQuery('picture.get', { id })
  return (
    <figure className="stack large-picture">
      {value === undefined ? <Refusal sentence={refused} /> : <img src={value.address} alt={name} />}
      <figcaption className="between">
        <span>{name}</span>
        <Button onPress={onClose}>{tell('life.picture.close')}</Button>
      </figcaption>
      <Acts
        plain
        acts={[
          {
            ...{ id: 'remove', words: tell('life.picture.remove') },
            label: tell('life.doing', { doing: tell('life.picture.remove'), what: name }),
            form: (close) => (
              <ActForm
                label={tell('life.picture.remove')}
                keep={tell('life.picture.remove')}
                close={close}
                work={async () => {
                  await workroom.ask('picture.remove', { id })
                  onRemoved()
                }}
              >
                <p>{tell('life.picture.remove.sure', { name })}</p>
              </ActForm>
            ),
          },
        ]}
      />
    </figure>
  )
}
