/**
 * A picture drawn on a canvas, made smaller where it is larger than that; undefined for what the browser cannot read.
 *
 * @param longest side, pixels
 * @param ground a colour that lies under it, for formats that know no transparency
 */
export async function canvasOf(
  file: File,
  longest: number,
  ground?: string,
): Promise<HTMLCanvasElement | undefined> {
  const bitmap = await createImageBitmap(file).catch(() => undefined)
  if (bitmap === undefined) return undefined
  const scale = Math.min(1, longest / Math.max(bitmap.width, bitmap.height))
  const canvas = document.createElement('canvas')
  canvas.width = Math.max(1, Math.round(bitmap.width * scale))
  canvas.height = Math.max(1, Math.round(bitmap.height * scale))
  const drawing = canvas.getContext('2d')!
  if (ground !== undefined) {
    drawing.fillStyle = ground
    drawing.fillRect(0, 0, canvas.width, canvas.height)
  }
  drawing.drawImage(bitmap, 0, 0, canvas.width, canvas.height)
  bitmap.close()
  return canvas
}
