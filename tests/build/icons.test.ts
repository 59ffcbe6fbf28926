import { readdirSync, readFileSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { describe, expect, test } from 'vitest'

const build = resolve(import.meta.dirname, '../../build')
const icons = join(build, 'icon')
const read = (name: string) => readFileSync(join(icons, name))

/** Width and height of a PNG by its own head. */
function sizeOf(png: Buffer): number[] {
  expect(png.subarray(0, 8).toString('latin1')).toBe('\x89PNG\r\n\x1a\n')
  expect(png.toString('latin1', 12, 16)).toBe('IHDR')
  expect(png.subarray(-8, -4).toString('latin1')).toBe('IEND')
  return [png.readUInt32BE(16), png.readUInt32BE(20)]
}

describe('the planner’s icons', () => {
  test('are pictures of the sizes that their names say, from 16 to 1024', () => {
    const names = readdirSync(icons).filter((name) => name.endsWith('.png'))
    const sizes = names.map((name) => {
      const [, width, height] = /^(\d+)x(\d+)\.png$/.exec(name)!
      expect(sizeOf(read(name)), name).toEqual([Number(width), Number(height)])
      return Number(width)
    })
    expect(sizes.sort((a, b) => a - b)).toEqual([16, 24, 32, 48, 64, 128, 256, 512, 1024])
  })

  // The format: "Icons", Win32 documentation, ICONDIR and ICONDIRENTRY.
  test('lie in one file for Windows, each where its entry says', () => {
    const file = read('icon.ico')
    expect([file.readUInt16LE(0), file.readUInt16LE(2)]).toEqual([0, 1])
    let end = 6 + 16 * file.readUInt16LE(4)
    const sizes = Array.from({ length: file.readUInt16LE(4) }, (_, i) => {
      const at = 6 + 16 * i
      const [length, from] = [file.readUInt32LE(at + 8), file.readUInt32LE(at + 12)]
      expect(from).toBe(end)
      end = from + length
      const size = file[at] === 0 ? 256 : file[at]!
      expect(file[at + 1]).toBe(file[at])
      expect(sizeOf(file.subarray(from, end))).toEqual([size, size])
      expect(file.subarray(from, end).equals(read(`${size}x${size}.png`))).toBe(true)
      return size
    })
    expect(end).toBe(file.length)
    expect(sizes).toEqual([16, 24, 32, 48, 64, 128, 256])
  })

  // Kinds and sizes as Apple's iconutil names them: icon_16x16 … icon_512x512@2x.
  test('lie in one file for a Mac, in the sizes of their kinds', () => {
    const file = read('icon.icns')
    expect([file.toString('latin1', 0, 4), file.readUInt32BE(4)]).toEqual(['icns', file.length])
    const found: Record<string, number> = {}
    for (let at = 8; at < file.length; at += file.readUInt32BE(at + 4)) {
      const [width, height] = sizeOf(file.subarray(at + 8, at + file.readUInt32BE(at + 4)))
      expect(width).toBe(height)
      found[file.toString('latin1', at, at + 4)] = width!
    }
    expect(found).toEqual({
      ...{ icp4: 16, ic11: 32, icp5: 32, ic12: 64, icp6: 64, ic07: 128, ic13: 256 },
      ...{ ic08: 256, ic14: 512, ic09: 512, ic10: 1024 },
    })
  })

  test('show the same drawing as the page', () => {
    const drawing = readFileSync(join(build, 'icon.svg'), 'utf8')
    expect(readFileSync(join(build, '../renderer/public/mark.svg'), 'utf8')).toBe(drawing)
  })
})
