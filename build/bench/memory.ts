import { heldAfter } from './start.ts'

/** `npm run bench:memory`: what the page holds after 200, 600 and 1,000 changes, at the same screen each time. */
for (const { changes, heap, nodes, listeners } of await heldAfter([200, 600, 1000]))
  console.log(
    `after ${changes} changes: ${(heap / 1e6).toFixed(2)} MB of heap, ${nodes} nodes, ${listeners} listeners`,
  )
