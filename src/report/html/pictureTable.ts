import { escapeXml } from '../draw/escapeXml.js';
import { fractionsHtml } from './fractionsHtml.js';

/** One thing compared: its picture and what stands beside it; null = the photo cannot tell. */
export interface PictureRow {
  readonly pictureHref: string;
  readonly name: string;
  readonly cells: readonly (string | null)[];
}

/** A strip of pictures with a table beside it, one row a picture: candidates, placements, boards. */
export function pictureTable(columns: readonly string[], rows: readonly PictureRow[]): string {
  const heads = columns.map((column) => `<th scope="col">${escapeXml(column)}</th>`).join('');
  const lines = rows.map(({ pictureHref, name, cells }) => {
    const picture = `<th scope="row"><img src="${escapeXml(pictureHref)}" alt="">${fractionsHtml(name)}</th>`;
    const values = cells.map((cell, i) => {
      // On a phone the rows become blocks, each cell under its column's name.
      const head = `data-head="${escapeXml(columns[i] ?? '')}"`;
      return cell === null
        ? `<td ${head} class="untold">cannot tell</td>`
        : `<td ${head}>${fractionsHtml(cell)}</td>`;
    });
    return `<tr>${picture}${values.join('')}</tr>`;
  });
  return `<div class="scroll"><table class="pictures"><thead><tr><td></td>${heads}</tr></thead><tbody>${lines.join('')}</tbody></table></div>`;
}
