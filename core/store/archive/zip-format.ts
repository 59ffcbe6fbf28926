/*
 * As much of the ZIP format (APPNOTE.TXT 6.3.10 of PKWARE, from memory) as an archive of a workroom needs: one disk, files stored or
 * deflated, names in UTF-8, no ZIP64. All numbers are little-endian.
 */
export const LOCAL = { signature: 0x04034b50, bytes: 30 }
export const CENTRAL = { signature: 0x02014b50, bytes: 46 }
export const END = { signature: 0x06054b50, bytes: 22, longestComment: 0xffff }

/** Methods by which a file may be packed; all others are refused. */
export const STORED = 0
export const DEFLATED = 8
/** The bit that says a name is UTF-8. */
export const UTF8 = 0x0800
/** The bit that says a file is encrypted, which an archive of a workroom never is. */
export const ENCRYPTED = 0x0001

/** What 32 and 16 bits hold; the highest of each would say that ZIP64 has more. */
export const MOST_BYTES = 0xfffffffe
export const MOST_FILES = 0xfffe

/** 1 January 1980 at midnight: the earliest that the format knows. The same archive is made of the same book at any time. */
export const NO_TIME = 0
export const FIRST_DAY = 0x0021

/** A file in an archive: bytes of it as it is and as it lies there, and where its own head begins. */
export type ZipEntry = {
  name: string
  method: number
  crc: number
  bytes: number
  packed: number
  at: number
}
