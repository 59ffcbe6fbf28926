import { base64Of } from '../parts/base64.ts'
import { canvasOf } from '../parts/canvas.ts'

/** Longest side of a thumbnail, pixels. */
const SMALL = 320

/** A picture's file as it is sent: all of it, and a small JPEG where the browser can read it. */
export async function pictureOf(file: File): Promise<{ name: string; data: string; small?: string }> {
  const data = await base64Of(file)
  const small = await thumbnailOf(file)
  return { name: file.name, data, ...(small === undefined ? {} : { small: await base64Of(small) }) }
}

/** What is no picture has no thumbnail; the workroom then says so of the file itself. */
async function thumbnailOf(file: File): Promise<Blob | undefined> {
  // A JPEG knows no transparency: what is not drawn lies on white paper instead of turning black.
  const canvas = await canvasOf(file, SMALL, 'white')
  return new Promise((done) => {
    if (canvas === undefined) done(undefined)
    else canvas.toBlob((blob) => done(blob ?? undefined), 'image/jpeg', 0.82)
  })
}
