import { parseRingAngles } from '../../core/shop/movement/parseRingAngles.js';
import { cutClassAngles } from '../../core/shop/movement/ringAngles.js';

/** Reads one ring angle, degrees; a class stands for the angle that is taken for it. */
export function parseRingAngle(text: string): number {
  const angle = parseRingAngles(text);
  if (angle.kind === 'class') return cutClassAngles[angle.cut].takenDeg;
  return angle.kind === 'angle' ? angle.angleDeg : 0;
}
