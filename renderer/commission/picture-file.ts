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
  const bitmap = await createImageBitmap(file).catch(() => undefined)
  if (bitmap === undefined) return undefined
  const scale = Math.min(1, SMALL / Math.max(bitmap.width, bitmap.height))
  const canvas = document.createElement('canvas')
  canvas.width = Math.max(1, Math.round(bitmap.width * scale))
  canvas.height = Math.max(1, Math.round(bitmap.height * scale))
  const drawing = canvas.getContext('2d')!
  // A JPEG knows no transparency: what is not drawn lies on white paper instead of turning black.
  drawing.fillStyle = 'white'
  drawing.fillRect(0, 0, canvas.width, canvas.height)
  drawing.drawImage(bitmap, 0, 0, canvas.width, canvas.height)
  bitmap.close()
  return new Promise((done) => canvas.toBlob((blob) => done(blob ?? undefined), 'image/jpeg', 0.82))
}

function base64Of(blob: Blob): Promise<string> {
  return new Promise((done, failed) => {
    const reader = new FileReader()
    reader.onload = () => done(String(reader.result).replace(/^[^,]*,/, ''))
    reader.onerror = () => failed(reader.error)
    reader.readAsDataURL(blob)
  })
}
