import type { Locator, Page } from 'playwright-core'

/*
 * The keystroke-level model (S. K. Card, T. P. Moran & A. Newell, "The keystroke-level model for user performance time with
 * interactive systems", Communications of the ACM 23(7), 1980, 396-410): what a practised hand takes for a task is the sum
 * of what its parts take. A key takes 0.28 s (an average typist, not a secretary), pointing 1.1 s with its click, moving
 * the hand between keyboard and mouse 0.4 s, making up one's mind 1.35 s. As there, the mind is made up once before each
 * thing that is chosen or entered, and not before each key of a word or each step of the Tab key on the way.
 */
const SECONDS = { key: 0.28, pointing: 1.1, homing: 0.4, mental: 1.35 } as const

/** What a task takes a practised hand, in seconds by the model, and how often it does what. */
export type Effort = { seconds: number; interactions: number } & Record<
  'keys' | 'pointings' | 'homings' | 'mentals',
  number
>

/** More steps of the Tab key than this, and a hand reaches for the mouse. */
const TABS = 4

/** A hand that works the page as a maker would, and counts what that takes. */
export class Hand {
  readonly page: Page
  private counted = { keys: 0, pointings: 0, homings: 0, mentals: 0, interactions: 0 }
  private at: 'mouse' | 'keyboard' = 'mouse'

  constructor(page: Page) {
    this.page = page
  }

  /** What everything so far takes; an interaction is one field entered or one control used. */
  effort(): Effort {
    const { keys, pointings, homings, mentals } = this.counted
    const seconds =
      keys * SECONDS.key + pointings * SECONDS.pointing + homings * SECONDS.homing + mentals * SECONDS.mental
    return { ...this.counted, seconds }
  }

  /** Uses a control: a button, a link. */
  async press(control: Locator): Promise<void> {
    this.decide()
    if (!(await this.reach(control))) await this.keys('Enter')
  }

  /** Uses a control by a key of its own, which she knows. */
  async shortcut(...pressed: string[]): Promise<void> {
    this.decide()
    await this.keys(...pressed)
  }

  /** Enters a text in a field. */
  async enter(field: Locator, text: string): Promise<void> {
    this.decide()
    await this.reach(field)
    await this.type(text)
  }

  /** Types into what has the focus, as after a key that leads there. */
  async write(text: string): Promise<void> {
    this.decide()
    await this.type(text)
  }

  /** Chooses in a list of names by the first letters of one; a list that was opened by pointing is closed by Enter. */
  async choose(field: Locator, letters: string): Promise<void> {
    this.decide()
    const pointed = await this.reach(field)
    await this.type(letters)
    if (pointed) await this.keys('Enter')
  }

  /** Picks one by the first letters of its name, where the rest is offered. */
  async pick(field: Locator, letters: string): Promise<void> {
    await this.enter(field, letters)
    await this.keys('Enter')
  }

  private decide(): void {
    this.counted.mentals++
    this.counted.interactions++
  }

  private async type(text: string): Promise<void> {
    this.home('keyboard')
    // Letter by letter; one that is written with the shift key is two keys.
    for (const letter of text) {
      this.counted.keys += /[A-Z"!?&]/.test(letter) ? 2 : 1
      await this.page.keyboard.type(letter)
    }
  }

  private async keys(...pressed: string[]): Promise<void> {
    this.home('keyboard')
    for (const one of pressed) {
      this.counted.keys += one.split('+').length
      await this.page.keyboard.press(one)
    }
  }

  /** @returns whether she pointed at it */
  private async reach(control: Locator): Promise<boolean> {
    if (await this.tabbedTo(control)) return false
    await this.point(control)
    return true
  }

  private async point(control: Locator): Promise<void> {
    this.home('mouse')
    this.counted.pointings++
    await control.click()
  }

  /** Goes on with the Tab key where that is near: with her hand on the keys already, and few steps away. */
  private async tabbedTo(control: Locator): Promise<boolean> {
    if (this.at !== 'keyboard') return false
    const wanted = await control.elementHandle()
    const steps = await this.page.evaluate(
      ([target, most]) => {
        const inTurn = [
          ...document.querySelectorAll<HTMLElement>('a[href], button, input, select, textarea, summary'),
        ].filter(
          (one) => one.getClientRects().length > 0 && !one.hasAttribute('disabled') && one.tabIndex >= 0,
        )
        const from = inTurn.indexOf(document.activeElement as HTMLElement)
        const to = inTurn.indexOf(target as HTMLElement)
        const away = to - from
        return from < 0 || to < 0 || away < 0 || away > most ? undefined : away
      },
      [wanted, TABS] as const,
    )
    if (steps === undefined) return false
    for (let i = 0; i < steps; i++) await this.keys('Tab')
    const there = await control.evaluate((one) => one === document.activeElement)
    if (!there) throw new Error('the Tab key led elsewhere than was counted')
    return true
  }

  private home(to: 'mouse' | 'keyboard'): void {
    if (this.at !== to) this.counted.homings++
    this.at = to
  }
}
