import type { Money } from '../../core/words/money.ts'
import type { InputOf } from '../../core/workroom.ts'
import { Button } from '../parts/button.tsx'
import { useTell } from '../workroom.tsx'

/** A line as it will be sent when the quote is saved. */
export type Line = InputOf<'quote.save'>['lines'][number]
/** Garments that are on the quote already, beside the one on the desk. */
export type Basket = { key: number; line: Line; garment: string; wearer: string; total: Money }[]
export type BasketProps = { basket: Basket; setBasket: (basket: Basket) => void }

/** The garments that are on the quote already, each with a way off it. */
export function OnTheQuote({ basket, setBasket }: BasketProps) {
  const tell = useTell()
  if (basket.length === 0) return null
  return (
    <section className="on-the-quote" aria-label={tell('screen.desk.onTheQuote')}>
      <h2>{tell('screen.desk.onTheQuote')}</h2>
      <ul>
        {basket.map(({ key, garment, wearer, total }) => (
          <li key={key}>
            <span>{tell('screen.desk.onTheQuoteLine', { garment, wearer, total })}</span>
            <Button onPress={() => setBasket(basket.filter((one) => one.key !== key))}>
              {tell('screen.desk.takeOff', { garment })}
            </Button>
          </li>
        ))}
      </ul>
      <p className="quiet">{tell('screen.desk.together')}</p>
    </section>
  )
}
