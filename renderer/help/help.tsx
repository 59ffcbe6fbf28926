import { memo, type ReactNode, useMemo } from 'react'
import { Button, Dialog, DialogTrigger, Heading, Popover } from 'react-aria-components'
import { drawExplained, type ExplainedWord } from '../../core/draw/explained.ts'
import { drawTape, type TapedMeasure } from '../../core/draw/tape.ts'
import { SheetDrawing } from '../parts/sheet-drawing.tsx'
import { useTell } from '../workroom.tsx'
import { sourceOf } from './topics.ts'

/** A question mark beside a word of the trade: what it means and why it matters, with a drawing. */
export const WordHelp = memo(({ word }: { word: ExplainedWord }) => {
  const tell = useTell()
  const name = tell(`help.${word}`)
  const what = tell(`help.${word}.what`)
  return (
    <Help name={name}>
      <WordDrawing {...{ word, what }} />
      <p>{what}</p>
      <p>{tell(`help.${word}.why`)}</p>
      <Source code={sourceOf(word)} />
    </Help>
  )
})

/** A question mark beside a measure: where its tape goes, how it is taken and what to mind. */
export function MeasureHelp({ measure }: { measure: TapedMeasure }) {
  const tell = useTell()
  return (
    <Help name={tell(`measure.name.${measure}`)}>
      <MeasureTaking measure={measure} />
    </Help>
  )
}

/** How a measure is taken, without the question mark. */
export function MeasureTaking({ measure }: { measure: TapedMeasure }) {
  const tell = useTell()
  const how = tell(`measure.how.${measure}`)
  const label = tell('help.draws.measure', { what: how })
  const drawing = useMemo(() => drawTape(measure, label, TAPE_SCALE), [measure, label])
  return (
    <>
      <div className="drawn">
        <SheetDrawing drawing={drawing} />
      </div>
      <p>{how}</p>
      <p>{tell(`help.measure.${measure}`)}</p>
      <Source code="help.source.iso8559" />
    </>
  )
}

/** The figure is drawn 6 cm tall. */
const TAPE_SCALE = 0.036

function WordDrawing({ word, what }: { word: ExplainedWord; what: string }) {
  const tell = useTell()
  const label = tell('help.draws.word', { what })
  const drawing = useMemo(() => drawExplained(word, label), [word, label])
  return (
    <div className="drawn">
      <SheetDrawing drawing={drawing} />
    </div>
  )
}

function Source({ code }: { code: Parameters<ReturnType<typeof useTell>>[0] | undefined }) {
  const tell = useTell()
  return code === undefined ? null : <p className="quiet">{tell('help.source', { source: tell(code) })}</p>
}

/** The question mark, and what opens over it. Escape, the button in it or a press beside it closes it. */
function Help({ name, children }: { name: string; children: ReactNode }) {
  const tell = useTell()
  return (
    <DialogTrigger>
      <Button className="help-mark" aria-label={tell('help.about', { what: name })} />
      <Popover className="help-open" placement="right top" offset={6}>
        <Dialog className="help-dialog">
          {({ close }) => (
            <>
              <div className="between">
                <Heading slot="title" level={2}>
                  {name}
                </Heading>
                <Button className="help-close" onPress={close}>
                  {tell('help.close')}
                </Button>
              </div>
              {children}
            </>
          )}
        </Dialog>
      </Popover>
    </DialogTrigger>
  )
}
