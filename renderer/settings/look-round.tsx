import { Button } from '../parts/button.tsx'
import { useShown } from '../parts/printing.ts'
import { Refusal } from '../parts/refusal.tsx'
import { useDoing, useHouse, useQuery, useTell } from '../workroom.tsx'
import { useEnterSample } from './sample.ts'

/** For whoever is new here: the page to lie beside the keyboard, and a look round the sample, from her own workroom. */
export function LookRound({ onEntered }: { onEntered: () => void }) {
  const { workroom } = useHouse()
  const tell = useTell()
  const show = useShown()
  const doing = useDoing()
  const enter = useEnterSample()
  const own = useQuery('workroom.describe', {}).value?.kind === 'own'
  const look = async () => {
    await enter()
    location.hash = ''
    onEntered()
  }
  return (
    <section className="sheet stack">
      <h2>{tell('guiding.new')}</h2>
      <p className="quiet">{tell('guiding.print')}</p>
      <div className="row">
        <Button
          busy={doing.busy}
          onPress={() => void doing.run(() => show(workroom.ask('startGuide.print', {})))}
        >
          {tell('start.print')}
        </Button>
      </div>
      {own ? (
        <>
          <p className="quiet">{tell('guiding.look')}</p>
          <div className="row">
            <Button busy={doing.busy} onPress={() => void doing.run(look)}>
              {tell('screen.first.look')}
            </Button>
          </div>
        </>
      ) : null}
      <Refusal sentence={doing.refused?.message} />
    </section>
  )
}
