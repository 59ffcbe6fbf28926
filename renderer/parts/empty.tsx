/** What a place is for while nothing is in it, and the way to what fills it. */
export function Empty({ words, go, href }: { words: string; go: string; href: string }) {
  return (
    <div className="stack narrow">
      <p>{words}</p>
      <div>
        <a className="button" href={href}>
          {go}
        </a>
      </div>
    </div>
  )
}
