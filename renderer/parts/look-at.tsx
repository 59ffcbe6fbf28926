import { useState } from 'react'
import type { InputOf } from '../../core/workroom.ts'
import { useQuery, useTell } from '../workroom.tsx'
import { Button } from './button.tsx'
import { Refusal } from './refusal.tsx'

type Asked = InputOf<'paper.show'>['asked']

/** A button that shows a paper page by page before it is printed, and puts it away again. */
export function LookAt({ asked, words }: { asked: Asked; words: string }) {
  const tell = useTell()
  const [open, setOpen] = useState(false)
  return (
    <>
      <div>
        <Button expanded={open} onPress={() => setOpen(!open)}>
          {open ? tell('guiding.look.close') : words}
        </Button>
      </div>
      {open ? <Pages key={JSON.stringify(asked)} asked={asked} /> : null}
    </>
  )
}

function Pages({ asked }: { asked: Asked }) {
  const tell = useTell()
  const { value, refused } = useQuery('paper.show', { asked })
  if (value === undefined) return <Refusal sentence={refused} />
  const { pages } = value
  return (
    <div className="shown-pages">
      {pages.map(({ svg, width, height }, i) => (
        <figure
          // biome-ignore lint/suspicious/noArrayIndexKey: pages have no other name than their number
          key={i}
          role="img"
          aria-label={tell('paper.foot.page', { page: String(i + 1), pages: String(pages.length) })}
          style={{ aspectRatio: `${width} / ${height}` }}
          // biome-ignore lint/security/noDangerouslySetInnerHtml: markup made by the paper room alone, which escapes all text
          dangerouslySetInnerHTML={{ __html: svg }}
        />
      ))}
    </div>
  )
}
