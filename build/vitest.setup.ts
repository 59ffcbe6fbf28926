import { buildScreen, buildShell } from './bundles.ts'

/** Builds once what the browser and window tests run against. */
export default async function setup(): Promise<void> {
  await buildScreen()
  await buildShell()
}
