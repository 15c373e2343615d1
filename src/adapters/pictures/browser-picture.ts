/** A picture that was opened: how large it is, and a JPEG of it at another size. */
export interface OpenPicture {
  readonly width: number;
  readonly height: number;
  /** Null where there is no room to draw it. */
  jpeg(width: number, height: number, quality: number): Promise<Blob | null>;
  readonly close: () => void;
}

/**
 * A picture as the browser reads it, turned as it was held. It is painted anew, on white where it has holes:
 * of all else in its file, the place and the hour among it, nothing comes along. Rejects where it is broken.
 */
export async function openInBrowser(file: Blob): Promise<OpenPicture> {
  const bitmap = await createImageBitmap(file, { imageOrientation: 'from-image' });
  return {
    width: bitmap.width,
    height: bitmap.height,
    jpeg(width, height, quality) {
      const canvas = document.createElement('canvas');
      Object.assign(canvas, { width, height });
      const pen = canvas.getContext('2d');
      if (pen === null) return Promise.resolve(null);
      pen.imageSmoothingQuality = 'high';
      pen.fillStyle = '#fff';
      pen.fillRect(0, 0, width, height);
      pen.drawImage(bitmap, 0, 0, width, height);
      return new Promise((resolve) => canvas.toBlob(resolve, 'image/jpeg', quality));
    },
    close: () => bitmap.close(),
  };
}
