import type { GapResult } from '../../core/results/gapResult.js';
import type { LayoutResult } from '../../core/results/layoutResult.js';

/**
 * Cuts and pieces as CSV (RFC 4180), mm, for a spreadsheet.
 * A cell that begins like a formula gets an apostrophe in front.
 */
export function sheetCsv(layout: LayoutResult, gap: GapResult | null = null): string {
  const rows: (string | number)[][] = [
    [
      'what',
      'n',
      'kind',
      'name',
      'reference',
      'exact mm',
      'setting',
      'setting mm',
      'to blade',
      'keeps',
      'length mm',
      'width mm',
      'caution',
    ],
    ...layout.cuts.map((cut) => [
      'cut',
      cut.n,
      cut.kind,
      cut.workpiece,
      cut.reference,
      cut.fenceMm,
      cut.setting.text,
      cut.setting.mm,
      cut.toBlade,
      cut.keeps,
      '',
      '',
      cut.cautions.join(' '),
    ]),
    ...layout.pieces.map((piece) => [
      'piece',
      '',
      piece.kind,
      piece.name,
      '',
      '',
      '',
      '',
      '',
      '',
      piece.lengthMm,
      piece.dressedWidthMm,
      piece.mayNotDress,
    ]),
  ];
  if (gap) {
    rows.push([
      'gap',
      '',
      '',
      gap.species,
      '',
      gap.gapMm,
      '',
      gap.seasons.fittedMm,
      '',
      '',
      '',
      '',
      gap.equation,
    ]);
  }
  return `${rows.map((row) => row.map(cell).join(',')).join('\r\n')}\r\n`;
}

function cell(value: string | number): string {
  if (typeof value === 'number') return String(value);
  const safe = /^[=+\-@\t\r]/.test(value) ? `'${value}` : value;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
