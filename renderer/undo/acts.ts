import type { OutputOf, RequestName } from '../../core/workroom.ts'
import { LOOKED_UP } from './looked-up.ts'
import { type Step, type Way, way } from './way.ts'

const EVERY_GUARD = ['absent', 'untried', 'unwashed', 'unmeasured', 'estimated'] as const
const tickAgain = ({ answer }: { answer: OutputOf<'steps.untick'> }): readonly Step[] =>
  answer.marked.map((id) => ({ name: 'step.tick', payload: { id, anyway: [...EVERY_GUARD] } }))
const untick = ({ answer }: { answer: OutputOf<'step.tick'> }): readonly Step[] =>
  answer.marked.length === 0 ? [] : [{ name: 'steps.untick', payload: { ids: answer.marked } }]

/** What can be taken back, and how: each by a request that the workroom knows anyway, so that the history tells of both. */
export const WAYS: Partial<Record<RequestName, Way>> = {
  ...LOOKED_UP,
  'client.add': way('client.add', ({ answer: { client } }) => [
    { name: 'client.forget', payload: { id: client.id, name: client.name } },
  ]),
  'stockSize.add': way('stockSize.add', ({ answer: { client } }) => [
    { name: 'client.forget', payload: { id: client.id, name: client.name } },
  ]),
  'measurementSet.add': way('measurementSet.add', ({ answer }) => [
    { name: 'measurementSet.retire', payload: { id: answer.measurementSet.id } },
  ]),
  'measurementSet.retire': way('measurementSet.retire', ({ given: { id } }) => [
    { name: 'measurementSet.restore', payload: { id } },
  ]),
  'measurementSet.restore': way('measurementSet.restore', ({ given: { id } }) => [
    { name: 'measurementSet.retire', payload: { id } },
  ]),
  'cloth.add': way('cloth.add', ({ answer: { cloth } }) => [
    { name: 'cloth.takeBack', payload: { id: cloth.id, revision: cloth.revision } },
  ]),
  'cloth.takeBack': way('cloth.takeBack', ({ answer: { cloth } }) => [
    { name: 'cloth.putBack', payload: { id: cloth.id, revision: cloth.revision } },
  ]),
  'quote.decline': way('quote.decline', ({ given: { id } }) => [
    { name: 'quote.waitAgain', payload: { id } },
  ]),
  'step.tick': way('step.tick', untick),
  'stage.tick': way('stage.tick', untick),
  'step.untick': way('step.untick', tickAgain),
  'steps.untick': way('steps.untick', tickAgain),
  'stage.untick': way('stage.untick', tickAgain),
  'piece.cut': way('piece.cut', ({ given: { garmentId, piece, copy, cut = true } }) => [
    {
      name: 'piece.cut',
      payload: { ...{ garmentId, piece, copy }, cut: !cut, anyway: [...EVERY_GUARD] },
    },
  ]),
  'time.log': way('time.log', ({ answer: { time } }) => [
    { name: 'time.remove', payload: { id: time.id, revision: time.revision } },
  ]),
  'timer.stop': way('timer.stop', ({ answer: { time } }) => [
    { name: 'time.remove', payload: { id: time.id, revision: time.revision } },
  ]),
  'timer.start': way('timer.start', () => [{ name: 'timer.drop', payload: {} }]),
  'time.remove': way('time.remove', ({ answer: { time } }) => [
    { name: 'time.putBack', payload: { id: time.id, revision: time.revision } },
  ]),
  'time.putBack': way('time.putBack', ({ answer: { time } }) => [
    { name: 'time.remove', payload: { id: time.id, revision: time.revision } },
  ]),
  'time.setAside': way('time.setAside', ({ answer: { time } }) => [
    { name: 'time.takeUp', payload: { id: time.id, revision: time.revision } },
  ]),
  'time.takeUp': way('time.takeUp', ({ answer: { time } }) => [
    { name: 'time.setAside', payload: { id: time.id, revision: time.revision } },
  ]),
  'person.add': way('person.add', ({ answer: { person } }) => [
    { name: 'person.retire', payload: { id: person.id, revision: person.revision } },
  ]),
  'person.retire': way('person.retire', ({ answer: { person } }) => [
    { name: 'person.putBack', payload: { id: person.id, revision: person.revision } },
  ]),
  'away.add': way('away.add', ({ answer: { away } }) => [{ name: 'away.remove', payload: { id: away.id } }]),
  'away.remove': way('away.remove', ({ answer: { away } }) => [
    {
      name: 'away.add',
      payload: { personId: away.personId, from: away.from, to: away.to, note: away.note },
    },
  ]),
  'note.add': way('note.add', ({ answer: { note } }) => [
    { name: 'note.remove', payload: { id: note.id, revision: note.revision } },
  ]),
  'note.remove': way('note.remove', ({ given: { id } }) => [
    { name: 'bin.putBack', payload: { kind: 'note', id } },
  ]),
  'picture.add': way('picture.add', ({ answer: { picture } }) => [
    { name: 'picture.remove', payload: { id: picture.id } },
  ]),
  'picture.remove': way('picture.remove', ({ given: { id } }) => [
    { name: 'bin.putBack', payload: { kind: 'picture', id } },
  ]),
  'fitting.add': way('fitting.add', ({ answer: { fitting } }) => [
    { name: 'fitting.remove', payload: { id: fitting.id, revision: fitting.revision } },
  ]),
  'fitting.remove': way('fitting.remove', ({ given: { id } }) => [
    { name: 'bin.putBack', payload: { kind: 'fitting', id } },
  ]),
  'bin.putBack': way('bin.putBack', ({ given: { kind, id }, answer: { revision } }) => {
    if (kind === 'picture') return [{ name: 'picture.remove', payload: { id } }]
    const payload = { id, revision: revision! }
    if (kind === 'note') return [{ name: 'note.remove', payload }]
    return [kind === 'fitting' ? { name: 'fitting.remove', payload } : { name: 'time.remove', payload }]
  }),
  'commission.cancel': way('commission.cancel', ({ answer: { commission } }) => [
    { name: 'commission.takeUp', payload: { id: commission.id, revision: commission.revision } },
  ]),
  'commission.deliver': way('commission.deliver', ({ answer: { commission } }) => [
    { name: 'commission.reopen', payload: { id: commission.id, revision: commission.revision } },
  ]),
  'stock.add': way('stock.add', ({ answer: { length } }) => [
    { name: 'stock.count', payload: { id: length.id, length: 0 } },
  ]),
  'stock.reserve': way('stock.reserve', ({ given: { id, garmentId } }) => [
    { name: 'stock.release', payload: { id, garmentId } },
  ]),
  'shopping.order': way('shopping.order', ({ answer: { length } }) => [
    { name: 'stock.callOff', payload: { id: length.id } },
  ]),
  'remnant.use': way('remnant.use', ({ given: { id } }) => [{ name: 'remnant.putBack', payload: { id } }]),
  'remnant.putBack': way('remnant.putBack', ({ given: { id } }) => [
    { name: 'remnant.use', payload: { id } },
  ]),
}
