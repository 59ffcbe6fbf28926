import { defineConfig } from 'vitest/config'

const root = new URL('..', import.meta.url).pathname

export default defineConfig({
  test: {
    // A slow machine is no fault: what is waited for may take as long as a page may.
    expect: { poll: { timeout: 20_000 } },
    root,
    include: ['tests/**/*.test.ts'],
    globalSetup: [`${root}build/vitest.setup.ts`],
    // As many at once as there are cores: most of the time of the screens' tests is the browser's.
    maxWorkers: '100%',
    // Modules are loaded once and not for every file again, which was a fifth of the time; a test that changes what one keeps
    // loads its own.
    isolate: false,
    testTimeout: 60_000,
    hookTimeout: 60_000,
  },
})
