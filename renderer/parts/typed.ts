import { useHalfFilled } from './kept.tsx'

/**
 * What stands in the fields of a form: the texts, and for each field its value and how it is written over. It outlives
 * its screen; forms of the same fields on one screen are told apart by `KeptApart`, as `Acts` does.
 */
export function useTyped<T extends Record<string, string>>(first: T) {
  const [typed, setTyped, forget] = useHalfFilled(Object.keys(first).join(' '), first)
  const field = (id: keyof T) => ({
    value: typed[id] as string,
    onChange: (text: string) => setTyped((before) => ({ ...before, [id]: text })),
  })
  return { typed, field, write: setTyped, forget }
}
