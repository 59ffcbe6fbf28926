/** The sentence that refused something, said at once to whoever cannot see it. */
export function Refusal({ sentence }: { sentence: string | undefined }) {
  return sentence === undefined ? null : (
    <p className="refusal" role="alert">
      {sentence}
    </p>
  )
}
