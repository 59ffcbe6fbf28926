import { defineConfig } from 'vitest/config'

const root = new URL('..', import.meta.url).pathname

export default defineConfig({
  test: {
    root,
    include: ['tests/**/*.test.ts'],
    globalSetup: [`${root}build/vitest.setup.ts`],
    // As many at once as there are cores: most of the time of the screens' tests is the browser's.
    maxWorkers: '100%',
    testTimeout: 60_000,
    hookTimeout: 60_000,
  },
})
