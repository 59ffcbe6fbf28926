/** Bytes as base64, as requests send them. */
export function base64Of(blob: Blob): Promise<string> {
  return new Promise((done, failed) => {
    const reader = new FileReader()
    reader.onload = () => done(String(reader.result).replace(/^[^,]*,/, ''))
    reader.onerror = () => failed(reader.error)
    reader.readAsDataURL(blob)
  })
}
