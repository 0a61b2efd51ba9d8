import { distanceToSegment } from '../geometry/distanceToSegment.js';
import { pointInPolygon } from '../geometry/pointInPolygon.js';
import type { PanelPhoto } from '../image/panelPhoto.js';
import type { Progress } from '../progress.js';
import { createRandom } from '../random/createRandom.js';
import type { LineMm, ScoreResult, SeamResult } from '../results/scoreResult.js';
import { closedCrossings } from '../seam/closedCrossings.js';
import { closedGap, isOpenGap } from '../seam/closedGap.js';
import { findSeams } from '../seam/find/findSeams.js';
import { lineMeasures } from '../seam/lineMeasures.js';
import { keptWindows, ownLines } from '../seam/ownLines.js';
import { panelPlanes } from '../seam/panelPlanes.js';
import { type SeamFrame, seamFrame } from '../seam/seamFrame.js';
import { seamGlueLine } from '../seam/seamGlueLine.js';
import { seamReach } from '../seam/seamReach.js';
import { seamResult } from '../seam/seamResult.js';
import { type PanelPlanes, type SeamWood, seamWood } from '../seam/seamWood.js';
import { checkPlacedSeams } from './checkPlacedSeams.js';
import { photoNotes } from './photoNotes.js';
import type { ScoreOptions } from './scoreOptions.js';

/** A seam to be measured. */
interface Joint {
  readonly line: LineMm;
  readonly found: 'photo' | 'placed';
  readonly p: number | null;
  readonly implied: boolean;
}

/** Windows of the boards' own lines this near to another joint are left out, mm. */
const clearOfJointMm = 4;
/** A found seam nearer than this to a placed one is the placed one, mm. */
const sameSeamMm = 4;

/**
 * Scores a finished glue-up: finds the seams of a rectified panel (and takes the placed ones),
 * measures each and says how visible it is from `options.distanceMm`.
 *
 * @param photo the panel, square on. @param options see `ScoreOptions`.
 * @throws SeamgrainError `badPanel` when a placed seam lies outside the panel or has no length.
 */
export function scorePanel(
  photo: PanelPhoto,
  options: ScoreOptions,
  progress?: Progress,
): ScoreResult {
  checkPlacedSeams(options.placedSeams, photo);
  progress?.(0.02, 'reading the panel');
  const planes = panelPlanes(photo);
  const placed: Joint[] = options.placedSeams.map((line) => ({
    line,
    found: 'placed',
    p: null,
    implied: false,
  }));
  const found: Joint[] = options.find
    ? findSeams(planes, createRandom(options.seed), (f, what) => progress?.(0.05 + 0.6 * f, what))
        .filter(({ line }) => placed.every((joint) => !sameSeam(joint.line, line)))
        .map(({ line, p, implied = false }) => ({ line, found: 'photo', p, implied }))
    : [];
  const joints = [...placed, ...found].sort((a, b) => middle(a.line) - middle(b.line));
  const seams = joints.map((_, k) => {
    progress?.(0.65 + (0.35 * k) / joints.length, `measuring joint ${k + 1} of ${joints.length}`);
    return scoreJoint(planes, photo, joints, k, options);
  });
  progress?.(1, 'done');
  const worst = seams.reduce<SeamResult | null>(
    (a, b) => ((b.visibility.v ?? -1) > (a?.visibility.v ?? -1) ? b : a),
    null,
  );
  return {
    schema: 'seamgrain/score@1',
    panel: { widthMm: photo.widthMm, heightMm: photo.heightMm, pxPerMm: photo.pxPerMm },
    seams,
    visibility: { v: worst?.visibility.v ?? null, word: worst?.visibility.word ?? null },
    notes: [...photo.notes, ...photoNotes(planes, seams.length, options)],
  };
}

function scoreJoint(
  planes: PanelPlanes,
  photo: PanelPhoto,
  joints: readonly Joint[],
  k: number,
  options: ScoreOptions,
): SeamResult {
  const { line, found, p, implied } = joints[k];
  const others = joints.filter((_, i) => i !== k).map((joint) => joint.line);
  const frame = seamFrame(line);
  const reach = seamReach(frame, others, photo.widthMm, photo.heightMm);
  const wood = closedCrossings(seamWood(planes, frame, reach.aMm, reach.bMm), others);
  const windowMm = (options.distanceMm * Math.PI) / 180;
  const marked = (atMm: number, etaMm: number) =>
    options.leftOut.some((region) => pointInPolygon(...panelPoint(frame, atMm, etaMm), region));
  const clear = (atMm: number, etaMm: number) =>
    !marked(atMm, etaMm) &&
    others.every(
      (other) => distanceToSegment(...panelPoint(frame, atMm, etaMm), other) > clearOfJointMm,
    );
  const read = (side: SeamWood) => {
    const whole = lineMeasures(side, 0, windowMm);
    const seam = keptWindows(whole, (atMm) => !marked(atMm, 0)) ?? whole;
    return { seam, own: ownLines(side, reach, windowMm, clear) };
  };
  const plain = read(wood);
  const glueLine = seamGlueLine(plain.seam, plain.own);
  const measured = isOpenGap(glueLine) ? { ...read(closedGap(wood)), openGap: glueLine } : plain;
  const id = `joint ${k + 1}`;
  return seamResult({ id, found, p, implied, line, frame, ...measured }, options.distanceMm);
}

function panelPoint(frame: SeamFrame, atMm: number, etaMm: number): [number, number] {
  return [
    frame.originXMm + atMm * frame.ex + etaMm * frame.nx,
    frame.originYMm + atMm * frame.ey + etaMm * frame.ny,
  ];
}

const middle = (line: LineMm) => line.y1Mm + line.y2Mm + 1e-3 * (line.x1Mm + line.x2Mm);

function sameSeam(a: LineMm, b: LineMm): boolean {
  return (
    distanceToSegment((b.x1Mm + b.x2Mm) / 2, (b.y1Mm + b.y2Mm) / 2, a) < sameSeamMm &&
    distanceToSegment((a.x1Mm + a.x2Mm) / 2, (a.y1Mm + a.y2Mm) / 2, b) < sameSeamMm
  );
}
