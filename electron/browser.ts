import { serveLoopback } from './loopback.ts'
import { dataFolder } from './places.ts'
import { startStore } from './store-host.ts'

/**
 * Opens the maker's workroom for a browser on this machine, and says in one line where; until it is told to end.
 * @param thread the entry of the thread that has the store
 * @param screen the folder of the built screen
 * @param port 0 for any that is free
 */
export async function openInBrowser(thread: URL, screen: string, port: number): Promise<void> {
  const store = startStore(dataFolder(process.env, process.platform), thread)
  const entered = await store.enter('own')
  if (!entered.ok) {
    console.error(entered.error.message)
    await store.close()
    process.exit(1)
  }
  const { address, close } = await serveLoopback(store, screen, port)
  console.log(
    `The planner is open in your browser at ${address} (there is no window of its own here; Ctrl-C closes it)`,
  )
  const end = async () => {
    await close()
    await store.close()
    process.exit(0)
  }
  process.on('SIGINT', end)
  process.on('SIGTERM', end)
}
