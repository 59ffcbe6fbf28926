/**
 * A UUID of version 7 (RFC 9562 §5.7): 48 bits of Unix milliseconds, then version, variant and 74 random
 * bits, so that ids sort by the time they were made.
 *
 * @param milliseconds Unix time in ms
 * @param random 10 random bytes
 */
export function uuidV7(milliseconds: number, random: Uint8Array): string {
  const bytes = new Uint8Array(16)
  let time = milliseconds
  for (let i = 5; i >= 0; i--) {
    bytes[i] = time % 256
    time = Math.floor(time / 256)
  }
  bytes.set(random.subarray(0, 10), 6)
  bytes[6] = (bytes[6]! & 0x0f) | 0x70
  bytes[8] = (bytes[8]! & 0x3f) | 0x80
  const hex = Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('')
  return `${hex.slice(0, 8)}-${hex.slice(8, 12)}-${hex.slice(12, 16)}-${hex.slice(16, 20)}-${hex.slice(20)}`
}

/** When a UUID of version 7 was made, Unix milliseconds. */
export const madeAt = (id: string): number => Number.parseInt(id.replace('-', '').slice(0, 12), 16)
