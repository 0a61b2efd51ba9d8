import type { SeamResult } from '../../core/results/scoreResult.js';
import { endsOfLine } from './endsOfLine.js';
import type { LengthUnits } from './lengthUnits.js';
import type { PlacedSeam } from './placedSeam.js';
import { smallLengthText } from './smallLengthText.js';

/**
 * How much width the joint lost and how far its pieces slid, or both readings where the photo
 * allows more than one: `6 mm lost, or 4 mm and a slide of 12 mm`; null where it cannot be told.
 */
export function lostText({ seam, runs }: PlacedSeam, units: LengthUnits): string | null {
  const { mm, seMm } = seam.lost;
  const small = (value: number) => smallLengthText(value, units);
  const readings = readingsOf(seam);
  if (readings.length > 1) {
    const [first, ...others] = readings;
    const slid = (slideMm: number) =>
      Math.abs(slideMm) < 0.3 ? '' : ` and a slide of ${small(slideMm)}`;
    const start = `${small(first!.mm)} lost${slid(first!.slideMm)}`;
    return [start, ...others.map((one) => `or ${small(one.mm)}${slid(one.slideMm)}`)].join(', ');
  }
  if (mm === null) return null;
  const within = seMm === null ? '' : `give or take ${small(seMm)}`;
  const slide = `${wedgeText(seam, runs, units)}${slideText(seam, runs, units)}`;
  if (Math.abs(mm) <= Math.max(0.2, 2 * (seMm ?? 0))) {
    const sure = within ? ` (${within})` : '';
    return `no width lost that can be measured${sure}${slide}`;
  }
  const verb = mm > 0 ? 'lost' : 'too much, as if wood had been added';
  return `${small(mm)} ${verb}${within ? `, ${within}` : ''}${slide}`;
}

/**
 * More than one pair of loss and slide, when the result gives them or when the errors lie on a
 * ridge: along it delta = g cos(theta) - u sin(theta) stays, so one standard error less of loss g
 * is that much / tan(theta) less of slide u.
 */
function readingsOf({ lost, grain }: SeamResult): { mm: number; slideMm: number }[] {
  const { mm, seMm, slideMm, slideSeMm, alternatives = [] } = lost;
  if (alternatives.length > 1) return [...alternatives];
  const told = mm !== null && seMm !== null && slideMm !== null && slideSeMm !== null;
  const angles = [grain.angleADeg, grain.angleBDeg].filter((angle) => angle !== null);
  if (!told || seMm < 1 || mm - seMm < 0 || angles.length === 0) return [];
  const meanDeg = angles.reduce((sum, angle) => sum + angle, 0) / angles.length;
  const alongRidgeMm = seMm / Math.tan((meanDeg * Math.PI) / 180);
  const onRidge = Math.abs(Math.abs(alongRidgeMm) / slideSeMm - 1) < 0.5;
  if (!onRidge) return [];
  return [
    { mm, slideMm },
    { mm: mm - seMm, slideMm: slideMm - alongRidgeMm },
  ];
}

/** Told when it is clearly more than nothing. */
function wedgeText({ lost }: SeamResult, runs: PlacedSeam['runs'], units: LengthUnits): string {
  const { wedgeMm = null, wedgeSeMm = null } = lost;
  if (wedgeMm === null || Math.abs(wedgeMm) < Math.max(0.3, 2 * (wedgeSeMm ?? 0))) return '';
  const [first, second] = endsOfLine(runs);
  const [more, less] = wedgeMm > 0 ? [second, first] : [first, second];
  return `, ${smallLengthText(Math.abs(wedgeMm), units)} more at the ${more} end than at the ${less}`;
}

function slideText({ lost }: SeamResult, runs: PlacedSeam['runs'], units: LengthUnits): string {
  const { slideMm, slideSeMm } = lost;
  if (slideMm === null || Math.abs(slideMm) < Math.max(0.3, 2 * (slideSeMm ?? 0))) return '';
  const side = runs === 'along' ? 'upper' : 'left';
  const ways = runs === 'along' ? ['left', 'right'] : ['up', 'down'];
  const way = `${runs === 'along' ? 'to the ' : ''}${ways[slideMm > 0 ? 1 : 0]}`;
  return `, the ${side} piece slid ${smallLengthText(slideMm, units)} ${way}`;
}
