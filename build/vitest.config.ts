import { defineConfig } from 'vitest/config'

const root = new URL('..', import.meta.url).pathname

export default defineConfig({
  test: {
    root,
    include: ['tests/**/*.test.ts'],
    globalSetup: [`${root}build/vitest.setup.ts`],
    testTimeout: 60_000,
    hookTimeout: 60_000,
  },
})
