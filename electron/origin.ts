/** Pages of the planner, and nothing else in the world, have this origin. */
export const SCHEME = 'ellwand'
export const ORIGIN = `${SCHEME}://planner`

/** Whether an address is one of the planner's own, whatever it is made to look like. */
export function isOwn(address: string): boolean {
  let url: URL
  try {
    url = new URL(address)
  } catch {
    return false
  }
  const { protocol, host, username, password } = url
  return protocol === `${SCHEME}:` && host === 'planner' && username === '' && password === ''
}

/** Whether an address is that of the planner's one page, in whichever room. */
export const isPage = (address: string): boolean =>
  isOwn(address) && new URL(address).pathname === '/' && new URL(address).search === ''
