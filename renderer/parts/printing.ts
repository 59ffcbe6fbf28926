import { useHouse } from '../workroom.tsx'

type Printed = { document: { id: string } }

/** Hands the maker a paper that was just printed. */
export function useShown(): (printed: Promise<Printed>) => Promise<void> {
  const { workroom } = useHouse()
  return async (printed) => {
    const { document } = await printed
    const shown = await workroom.bridge.paper(document.id)
    if (!shown.ok) throw new Error(shown.error.message)
  }
}
