import { useState } from 'react'
import { Button } from '../parts/button.tsx'
import { Empty } from '../parts/empty.tsx'
import { Refusal } from '../parts/refusal.tsx'
import { addressOf } from '../router.ts'
import { FromStock } from '../stock/from-stock.tsx'
import { ShoppingItem } from '../stock/shopping-item.tsx'
import { listAsText } from '../stock/shopping-text.ts'
import { useHouse, useQuery, useTell } from '../workroom.tsx'

/** What must be bought for agreed work: by supplier, how much, by which day and for whom. */
export function Shopping() {
  const { reader } = useHouse()
  const tell = useTell()
  const { value, refused, reload } = useQuery('shopping.list', {})
  const [copied, setCopied] = useState<'copied' | 'byHand'>()
  if (value === undefined) return <Refusal sentence={refused} />
  const { day, suppliers, fromStock } = value
  const text = listAsText(value, tell, reader)
  const copy = () =>
    navigator.clipboard.writeText(text).then(
      () => setCopied('copied'),
      () => setCopied('byHand'),
    )
  return (
    <div className="stack">
      <div className="between">
        <h1>{tell('shopping.title')}</h1>
        {suppliers.length === 0 ? null : (
          <div className="row">
            <Button onPress={() => window.print()} shortcut="print">
              {tell('shopping.print')}
            </Button>
            <Button onPress={() => void copy()}>{tell('shopping.copy')}</Button>
          </div>
        )}
      </div>
      <Refusal sentence={refused} />
      <div role="status" className="off-paper">
        {copied === undefined ? null : <p>{tell(`shopping.${copied}`)}</p>}
        {copied === 'byHand' ? <pre className="written">{text}</pre> : null}
      </div>
      <p className="off-paper quiet">{tell('shopping.about')}</p>
      {suppliers.length === 0 ? (
        <Empty
          words={tell('guiding.empty.shopping')}
          go={tell('guiding.empty.toCommissions')}
          href={addressOf('commissions')}
        />
      ) : null}
      {suppliers.map(({ supplier, items }) => (
        <section key={supplier ?? ''} className="sheet stack">
          <h2>{supplier ?? tell('shopping.nobody')}</h2>
          {supplier === null && items.some(({ article }) => article.kind === 'cloth') ? (
            <p className="off-paper quiet">{tell('shopping.nobody.help')}</p>
          ) : null}
          <ul className="entries life">
            {items.map((item) => (
              <ShoppingItem key={item.article.id} {...{ item, day }} onDone={reload} />
            ))}
          </ul>
        </section>
      ))}
      {fromStock.length === 0 ? null : <FromStock stock={fromStock} onDone={reload} />}
    </div>
  )
}
