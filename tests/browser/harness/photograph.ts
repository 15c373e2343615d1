import type { Page } from 'playwright-core';

/** Letters of a place, as a telephone writes them into its pictures. */
export const PLACE = 'HARBOUR-LANE-53.55N-9.99E';

/** EXIF that has a picture turned by a quarter to the right, and a place in its words. */
function exif(): Buffer {
  const tiff = Buffer.alloc(8 + 2 + 2 * 12 + 4 + PLACE.length);
  tiff.write('MM\0*', 0, 'latin1');
  tiff.writeUInt32BE(8, 4);
  tiff.writeUInt16BE(2, 8);
  const entry = (at: number, tag: number, type: number, count: number) => {
    tiff.writeUInt16BE(tag, at);
    tiff.writeUInt16BE(type, at + 2);
    tiff.writeUInt32BE(count, at + 4);
  };
  entry(10, 0x010e, 2, PLACE.length);
  tiff.writeUInt32BE(38, 18);
  entry(22, 0x0112, 3, 1);
  tiff.writeUInt16BE(6, 30);
  tiff.write(PLACE, 38, 'latin1');
  const head = Buffer.from([0xff, 0xe1, 0, 0]);
  const body = Buffer.concat([Buffer.from('Exif\0\0', 'latin1'), tiff]);
  head.writeUInt16BE(body.length + 2, 2);
  return Buffer.concat([head, body]);
}

/** A loaf as a telephone takes it, 3,000 by 2,000 dots, held upright: its place stands in the file. */
export async function photograph(page: Page): Promise<Buffer> {
  const letters = await page.evaluate(() => {
    const canvas = document.createElement('canvas');
    Object.assign(canvas, { width: 3000, height: 2000 });
    const pen = canvas.getContext('2d')!;
    pen.fillStyle = '#d8c9a8';
    pen.fillRect(0, 0, 3000, 2000);
    for (let n = 0; n < 900; n++) {
      const far = n / 900;
      pen.fillStyle = `hsl(${28 + ((n * 7) % 12)} 55% ${22 + 40 * far}%)`;
      pen.beginPath();
      pen.ellipse(1500, 1000, 1100 * (1 - far), 760 * (1 - far), 0, 0, 7);
      pen.fill();
      pen.fillStyle = `rgb(250 240 220 / ${0.2 + 0.5 * far})`;
      pen.fillRect((n * 733) % 3000, (n * 397) % 2000, 18, 7);
    }
    return canvas.toDataURL('image/jpeg', 0.95).split(',')[1]!;
  });
  const plain = Buffer.from(letters, 'base64');
  return Buffer.concat([plain.subarray(0, 2), exif(), plain.subarray(2)]);
}
