/**
 * Where the code of a thread lies: beside this file once built, else as `npm run build` built it. Never its sources:
 * Node strips types by WebAssembly, whose code V8 now and then frees twice when several threads do so at once, and
 * then ends the whole process.
 */
export const threadCode = (name: 'store-thread' | 'lay-thread'): URL =>
  new URL(import.meta.url.endsWith('.ts') ? `../dist/electron/${name}.js` : `./${name}.js`, import.meta.url)
