/** Sizes that Windows picks from; 256 is the largest it knows. */
const ICO_SIZES = [16, 24, 32, 48, 64, 128, 256]

/** The kinds of entries of a Mac's icon, and how many pixels the picture of each has; those of twice the points too. */
const ICNS_KINDS = {
  ...{ icp4: 16, icp5: 32, icp6: 64, ic07: 128, ic08: 256, ic09: 512, ic10: 1024 },
  ...{ ic11: 32, ic12: 64, ic13: 256, ic14: 512 },
} as const

const HEAD = 6
const ENTRY = 16

/**
 * PNG pictures in one file as Windows takes them: a head, an entry of 16 bytes for each, then the pictures.
 * @param pictures PNG files by their width, which is their height
 * @throws Error when a size is missing
 */
export function icoOf(pictures: ReadonlyMap<number, Buffer>): Buffer {
  const head = Buffer.alloc(HEAD + ENTRY * ICO_SIZES.length)
  head.writeUInt16LE(1, 2)
  head.writeUInt16LE(ICO_SIZES.length, 4)
  const files = ICO_SIZES.map((size) => pictureOf(pictures, size))
  let from = head.length
  for (const [i, size] of ICO_SIZES.entries()) {
    const at = HEAD + ENTRY * i
    const { length } = files[i]!
    // A byte holds no 256; 0 stands for it.
    head[at] = head[at + 1] = size % 256
    head.writeUInt16LE(1, at + 4)
    head.writeUInt16LE(32, at + 6)
    head.writeUInt32LE(length, at + 8)
    head.writeUInt32LE(from, at + 12)
    from += length
  }
  return Buffer.concat([head, ...files])
}

/**
 * PNG pictures in one file as a Mac takes them: each after its kind and length, all after those of the whole.
 * @param pictures PNG files by their width, which is their height
 * @throws Error when a size is missing
 */
export function icnsOf(pictures: ReadonlyMap<number, Buffer>): Buffer {
  const entries = Object.entries(ICNS_KINDS).map(([kind, size]) => chunk(kind, pictureOf(pictures, size)))
  return chunk('icns', Buffer.concat(entries))
}

function chunk(kind: string, content: Buffer): Buffer {
  const head = Buffer.alloc(8)
  head.write(kind, 'latin1')
  head.writeUInt32BE(8 + content.length, 4)
  return Buffer.concat([head, content])
}

function pictureOf(pictures: ReadonlyMap<number, Buffer>, size: number): Buffer {
  const picture = pictures.get(size)
  if (picture === undefined) throw new Error(`no picture of ${size} pixels`)
  return picture
}
