import { useState } from 'react'

/** What stands in the fields of a form: the texts, and for each field its value and how it is written over. */
export function useTyped<T extends Record<string, string>>(first: T) {
  const [typed, setTyped] = useState(first)
  const field = (id: keyof T) => ({
    value: typed[id] as string,
    onChange: (text: string) => setTyped((before) => ({ ...before, [id]: text })),
  })
  return { typed, field, write: setTyped }
}
