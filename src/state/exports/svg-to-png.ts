// A drawing as pixels: the browser itself draws the SVG. Twice as fine as on the screen, so that plies stay apart in print.

const SCALE = 2;

/** Null where the browser cannot. The drawing says its own width and height in pixels. */
export async function pngOf(svg: string): Promise<Blob | null> {
  const address = URL.createObjectURL(new Blob([svg], { type: 'image/svg+xml' }));
  try {
    const image = new Image();
    image.src = address;
    await image.decode();
    const canvas = document.createElement('canvas');
    canvas.width = image.naturalWidth * SCALE;
    canvas.height = image.naturalHeight * SCALE;
    const pen = canvas.getContext('2d');
    if (pen === null) return null;
    pen.drawImage(image, 0, 0, canvas.width, canvas.height);
    return await new Promise((resolve) => canvas.toBlob(resolve, 'image/png'));
  } catch {
    return null;
  } finally {
    URL.revokeObjectURL(address);
  }
}
