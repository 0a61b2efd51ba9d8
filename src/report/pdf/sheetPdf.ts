import type { JpegPicture } from '../sheet/mark.js';
import type { SheetPage } from '../sheet/sheetPage.js';
import { bytesFromBase64 } from './bytesFromBase64.js';
import { pdfContent } from './pdfContent.js';

/**
 * The sheet as a PDF 1.4 file: lines and words, no picture of a page.
 * It needs no font file and no library: Helvetica is one of the fonts that every reader has, and
 * words are measured with the wider DejaVu Sans, so what fits on screen fits here. JPEG goes in as
 * it is. Same input, same bytes: no date, no random identifier.
 * @param title shown by readers as the document's title
 */
export function sheetPdf(pages: readonly SheetPage[], title: string): Uint8Array {
  const pictures = picturesOf(pages);
  const imageName = (base64: string) =>
    `Im${pictures.findIndex((picture) => picture.base64 === base64)}`;
  const font = (name: string) =>
    text(`<< /Type /Font /Subtype /Type1 /BaseFont /${name} /Encoding /WinAnsiEncoding >>`);
  const firstPicture = 6;
  const firstPage = firstPicture + pictures.length;
  const images = pictures.map((_, index) => `/Im${index} ${firstPicture + index} 0 R`).join(' ');
  const resources = `<< /Font << /F1 4 0 R /F2 5 0 R >> /XObject << ${images} >> >>`;
  const kids = pages.map((_, index) => `${firstPage + 2 * index} 0 R`).join(' ');
  const objects: Uint8Array[] = [
    text('<< /Type /Catalog /Pages 2 0 R >>'),
    text(`<< /Type /Pages /Kids [${kids}] /Count ${pages.length} >>`),
    text(`<< /Title <${hex(title)}> >>`),
    font('Helvetica'),
    font('Helvetica-Bold'),
    ...pictures.map(pictureObject),
    ...pages.flatMap((page, index) => {
      const box = `[0 0 ${(0.75 * page.widthPx).toFixed(3)} ${(0.75 * page.heightPx).toFixed(3)}]`;
      const contents = firstPage + 2 * index + 1;
      return [
        text(
          `<< /Type /Page /Parent 2 0 R /MediaBox ${box} /Resources ${resources} /Contents ${contents} 0 R >>`,
        ),
        stream('', text(pdfContent(page.marks, page.heightPx, imageName))),
      ];
    }),
  ];
  return fileOf(objects);
}

function picturesOf(pages: readonly SheetPage[]): JpegPicture[] {
  const all = pages.flatMap(({ marks }) =>
    marks.flatMap((mark) => (mark.kind === 'image' ? [mark.picture] : [])),
  );
  return all.filter(
    ({ base64 }, index) => all.findIndex((other) => other.base64 === base64) === index,
  );
}

function pictureObject({ base64, widthPx, heightPx }: JpegPicture): Uint8Array {
  const about = `/Type /XObject /Subtype /Image /Width ${widthPx} /Height ${heightPx} /ColorSpace /DeviceRGB /BitsPerComponent 8 /Filter /DCTDecode `;
  return stream(about, bytesFromBase64(base64));
}

function stream(about: string, body: Uint8Array): Uint8Array {
  return joined([
    text(`<< ${about}/Length ${body.length} >>\nstream\n`),
    body,
    text('\nendstream'),
  ]);
}

/** Header, numbered objects, the table of where each begins, trailer. */
function fileOf(objects: readonly Uint8Array[]): Uint8Array {
  const parts: Uint8Array[] = [text('%PDF-1.4\n%\u00e2\u00e3\u00cf\u00d3\n')];
  let at = parts[0]!.length;
  const starts = objects.map((body, index) => {
    const start = at;
    const object = joined([text(`${index + 1} 0 obj\n`), body, text('\nendobj\n')]);
    parts.push(object);
    at += object.length;
    return start;
  });
  const rows = starts.map((start) => `${String(start).padStart(10, '0')} 00000 n \n`).join('');
  const size = objects.length + 1;
  parts.push(
    text(
      `xref\n0 ${size}\n0000000000 65535 f \n${rows}trailer\n<< /Size ${size} /Root 1 0 R /Info 3 0 R >>\nstartxref\n${at}\n%%EOF\n`,
    ),
  );
  return joined(parts);
}

/** UTF-16 with its mark, which document information takes for any script. */
function hex(words: string): string {
  const units = Array.from({ length: words.length }, (_, index) => words.charCodeAt(index));
  return [0xfeff, ...units].map((unit) => unit.toString(16).padStart(4, '0')).join('');
}

/** One byte a sign: everything written here is ASCII or below 256. */
function text(words: string): Uint8Array {
  return Uint8Array.from(words, (sign) => sign.charCodeAt(0));
}

function joined(parts: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(parts.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}
