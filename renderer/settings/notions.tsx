import { NOTIONS, NOTIONS_BY_PIECE, type NotionId } from '../../core/draft/types.ts'
import { useTell } from '../workroom.tsx'
import { Typing } from './fields.tsx'
import type { Form } from './form.ts'

/** What small things cost, by the piece or the metre. */
export function Notions({ form }: { form: Form }) {
  const tell = useTell()
  const { currency = '' } = form.typed.text
  return (
    <section className="sheet stack">
      <h2>{tell('screen.settings.notions', { currency })}</h2>
      <p className="quiet">{tell('screen.settings.notionsAbout')}</p>
      <div className="columns">
        {NOTIONS.map((id) => (
          <Typing
            key={id}
            form={form}
            id={id}
            label={tell(`screen.settings.${isByPiece(id) ? 'each' : 'metreOf'}`, {
              notion: tell(`draft.notion.${id}`),
            })}
          />
        ))}
      </div>
    </section>
  )
}

const isByPiece = (id: NotionId): boolean => (NOTIONS_BY_PIECE as readonly NotionId[]).includes(id)
