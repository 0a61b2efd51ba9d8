import { describe, expect, it } from 'vitest';
import type { PanelPhoto } from '../../../src/core/image/panelPhoto.js';
import { defaultScoreOptions } from '../../../src/core/pipeline/scoreOptions.js';
import { scorePanel } from '../../../src/core/pipeline/scorePanel.js';
import type { LineMm } from '../../../src/core/results/scoreResult.js';
import type { BoardSpec } from '../../../src/core/wood/boardSpec.js';
import type { CutSpec } from '../../../src/core/wood/cutSpec.js';
import { drawPanel } from '../../../src/core/wood/drawPanel.js';
import { mixedBoardsPanel } from '../../../src/core/wood/mixedBoardsPanel.js';
import type { PanelSpec } from '../../../src/core/wood/panelSpec.js';
import { ripPanel } from '../../../src/core/wood/ripPanel.js';
import { mirroredPhoto, ripAt, transposedPhoto, turnedPhoto } from '../seam/gratingJoint.js';
import { expectFinite } from './expectFinite.js';

const [widthMm, heightMm, seamYMm] = [180, 90, 45];
const kerfMm = 3.175;

function photoOf(spec: PanelSpec, pxPerMm = 4): PanelPhoto {
  const { image } = drawPanel(spec, { pxPerMm });
  return { image, pxPerMm, widthMm: spec.widthMm, heightMm: spec.heightMm, notes: [] };
}
const ripped = (board: BoardSpec, cut: Partial<CutSpec>, pxPerMm = 4) =>
  photoOf(ripPanel({ board, widthMm, heightMm, cuts: [{ atMm: seamYMm, ...cut }] }), pxPerMm);

function placed(photo: PanelPhoto, ...placedSeams: LineMm[]) {
  const result = scorePanel(photo, { ...defaultScoreOptions, find: false, placedSeams });
  expectFinite(result);
  return result.seams;
}
const found = (photo: PanelPhoto) => {
  const result = scorePanel(photo, defaultScoreOptions);
  expectFinite(result);
  return result;
};

const lively: BoardSpec = { seed: 77, setting: 'ring-porous', cut: 'flatsawn' };
const joint = ripped(lively, { lostMm: kerfMm, glueWidthMm: 0.3 });
const seam = ripAt(seamYMm, widthMm);
const straight = placed(joint, seam)[0]!;

describe('the same panel seen another way has the same joint', () => {
  const near = (v: number | null, wanted: number | null) => {
    expect(wanted!).toBeGreaterThan(0.5);
    expect(Math.abs(v! / wanted! - 1)).toBeLessThan(0.1);
  };

  it('in a mirror: same V, grain and offset the other way', () => {
    const other = placed(mirroredPhoto(joint), seam)[0]!;
    near(other.visibility.v, straight.visibility.v);
    expect(Math.abs(other.grain.angleADeg! + straight.grain.angleADeg!)).toBeLessThan(0.3);
    expect(Math.abs(other.grain.angleBDeg! + straight.grain.angleBDeg!)).toBeLessThan(0.3);
    expect(Math.abs(other.grain.changeDeg! + straight.grain.changeDeg!)).toBeLessThan(0.3);
  });

  it('turned half round: same V, sides exchanged', () => {
    const other = placed(turnedPhoto(joint), seam)[0]!;
    near(other.visibility.v, straight.visibility.v);
    expect(Math.abs(other.grain.angleADeg! - straight.grain.angleBDeg!)).toBeLessThan(0.3);
    expect(Math.abs(other.grain.changeDeg! + straight.grain.changeDeg!)).toBeLessThan(0.3);
  });

  it('with x and y exchanged: a crosscut measured as the rip', () => {
    const line = { x1Mm: seamYMm, y1Mm: 0, x2Mm: seamYMm, y2Mm: widthMm };
    const other = placed(transposedPhoto(joint), line)[0]!;
    expect(other.visibility.v!).toBeCloseTo(straight.visibility.v!, 6);
    expect(other.visibility.vanishesAtMm).toEqual(straight.visibility.vanishesAtMm);
    expect(other.offset).toEqual(straight.offset);
    expect(other.lost).toEqual(straight.lost);
    // Transposing exchanges the axes: 90 deg less the angle, and turns the other way.
    expect(Math.abs(other.grain.angleADeg!)).toBeCloseTo(
      90 - Math.abs(straight.grain.angleADeg!),
      4,
    );
    expect(other.grain.changeDeg!).toBeCloseTo(-straight.grain.changeDeg!, 4);
  });

  it('placed from its other end: nothing changes', () => {
    const back = { x1Mm: widthMm, y1Mm: seamYMm, x2Mm: 0, y2Mm: seamYMm };
    expect(placed(joint, back)[0]!.visibility).toEqual(straight.visibility);
  });

  it('photographed at one and a half times the scale: about the same V', () => {
    const finer = ripped(lively, { lostMm: kerfMm, glueWidthMm: 0.3 }, 6);
    const v = placed(finer, seam)[0]!.visibility.v!;
    expect(Math.abs(v / straight.visibility.v! - 1)).toBeLessThan(0.3);
  });
});

describe('facts of the trade', () => {
  // Common practice, no published source: straight quartered stock forgives the kerf.
  it.each(['softwood', 'diffuse-porous', 'ring-porous'] as const)(
    'a kerf in straight quartered %s disappears',
    (setting) => {
      const board = {
        seed: 21,
        setting,
        cut: 'quartered',
        slopeInFaceDeg: 0,
        waviness: 0,
      } as const;
      const { visibility } = placed(ripped(board, { lostMm: kerfMm }), seam)[0]!;
      expect(visibility.v!).toBeLessThan(0.5);
      expect(visibility.word).toBe('disappears');
    },
  );

  // Common practice, no published source: through a flatsawn face the kerf shows; the sham, cut and
  // joined with nothing lost, is the control on the same board.
  it.each([61, 8])(
    'the same kerf through flatsawn softwood shows, its sham does not (seed %d)',
    (seed) => {
      const board = { seed, setting: 'softwood', cut: 'flatsawn' } as const;
      const lost = placed(ripped(board, { lostMm: kerfMm }), seam)[0]!;
      const sham = placed(ripped(board, {}), seam)[0]!;
      expect(lost.visibility.v!).toBeGreaterThan(1);
      expect(sham.visibility.v!).toBeLessThan(0.6);
      // Width lost within three of its own standard errors, and nothing lost where nothing was.
      expect(Math.abs(lost.lost.mm! - kerfMm)).toBeLessThan(3 * lost.lost.seMm!);
      expect(Math.abs(sham.lost.mm!)).toBeLessThan(3 * sham.lost.seMm!);
    },
  );

  it('two softwood boards of different colour: the joint is found within 1 mm', () => {
    const board = (seed: number) => ({ seed, setting: 'softwood', cut: 'flatsawn' }) as const;
    const panel = mixedBoardsPanel({
      widthMm: 400,
      boards: [
        { board: board(31), heightMm: 52 },
        { board: board(32), heightMm: 60, colourShift: { dL: -6, da: 2, db: 3 } },
      ],
      glueWidthMm: 0.3,
    });
    const { seams, visibility } = found(photoOf(panel));
    expect(seams).toHaveLength(1);
    const { y1Mm, y2Mm } = seams[0]!.line;
    expect(Math.abs(y1Mm - 52)).toBeLessThan(1);
    expect(Math.abs(y2Mm - 52)).toBeLessThan(1);
    expect(seams[0]!.p).toBeLessThan(0.01);
    expect(seams[0]!.found).toBe('photo');
    expect(visibility.v).toBe(seams[0]!.visibility.v);
    expect(visibility.v!).toBeGreaterThan(1);
  });

  it.each([21, 23])('one piece of softwood has no joint to find (seed %d)', (seed) => {
    const board = { seed, setting: 'softwood', cut: 'flatsawn' } as const;
    const result = found(photoOf(ripPanel({ board, widthMm, heightMm, cuts: [] })));
    expect(result.seams).toEqual([]);
    expect(result.visibility).toEqual({ v: null, word: null });
    expect(result.notes.join()).toMatch(/no joint found/i);
  });
});
