import type { Plane } from '../../image/plane.js';
import type { Progress } from '../../progress.js';
import type { ArrangeOptions } from './arrangeOptions.js';
import { boardEdges } from './boardEdges.js';
import type { BoardFace, BoardPhotos } from './boardPhotos.js';
import { boardPlanes } from './boardPlanes.js';
import type { LongEdge } from './boardWay.js';
import { checkBoards } from './checkBoards.js';
import { edgeJoint } from './edgeJoint.js';
import { readGrown } from './figure/readGrown.js';
import { edgeIndex, type JointTable, jointIndex, tableCues } from './jointTable.js';
import { coarseFigure, type MatchLikeness, matchLikeness } from './matchLikeness.js';
import type { NumberedEdge } from './numberedEdge.js';
import { planesAtScale } from './planesAtScale.js';
import { shiftSteps } from './shiftSteps.js';
import { tableNotes } from './tableNotes.js';

/** A face's coarse figure by 2 * board + (face B ? 1 : 0). */
type Figures = Map<number, Plane>;

/**
 * Reads every joint that the boards on the bench could make.
 *
 * @param boards photos cropped to each board, grain from left to right.
 * @throws SeamgrainError `badPanel` when the boards cannot make a panel.
 */
export function readJointTable(
  boards: readonly BoardPhotos[],
  options: ArrangeOptions,
  progress?: Progress,
): JointTable {
  checkBoards(boards, options);
  const steps = shiftSteps(
    boards.map(({ faceA }) => faceA.photo.widthMm),
    options.spareMm,
  );
  const mostApart = 2 * Math.max(...steps.mostSteps);
  const edgeCount = 4 * boards.length;
  const size = edgeCount * edgeCount * (2 * mostApart + 1);
  const figures: Figures = new Map();
  const edges = readEdges(boards, options, figures, progress);
  const table: JointTable = {
    boards: boards.map(({ faceA, faceB, isImagined = false }, i) => ({
      photos: [faceA.name, faceB?.name ?? null],
      isImagined,
      lengthMm: faceA.photo.widthMm,
      widthMm: faceA.photo.heightMm - 2 * options.jointMm,
      mostSteps: steps.mostSteps[i],
    })),
    distanceMm: options.distanceMm,
    jointMm: options.jointMm,
    panelLengthMm: steps.panelLengthMm,
    stepMm: steps.stepMm,
    mostApart,
    v: new Float64Array(size).fill(Number.NaN),
    cue: new Uint8Array(size),
    ...readGrown(boards.length, edges),
    edgeColour: Array.from(
      { length: edgeCount },
      (_, index) => edges.find((edge) => edge.index === index)?.edge.colour ?? null,
    ),
    likeness: allLikeness(figures),
    notes: tableNotes(boards, options),
  };
  fillTable(table, edges, options, progress);
  return table;
}

function readEdges(
  boards: readonly BoardPhotos[],
  options: ArrangeOptions,
  figures: Figures,
  progress?: Progress,
): NumberedEdge[] {
  const faces = boards.flatMap(({ faceA, faceB }, board) => [
    { board, face: 'A' as BoardFace, photo: faceA.photo },
    ...(faceB ? [{ board, face: 'B' as BoardFace, photo: faceB.photo }] : []),
  ]);
  const pxPerMm = Math.min(...faces.map(({ photo }) => photo.pxPerMm));
  return faces.flatMap(({ board, face, photo }, i) => {
    progress?.((0.5 * i) / faces.length, `reading board ${board + 1} of ${boards.length}`);
    const planes = planesAtScale(boardPlanes(photo), pxPerMm);
    figures.set(2 * board + (face === 'B' ? 1 : 0), coarseFigure(planes.logLuminance, pxPerMm));
    const edges = boardEdges(planes, photo, options);
    return (['top', 'bottom'] as LongEdge[]).map((edge) => ({
      index: edgeIndex(board, face, edge),
      board,
      edge: edges[edge],
    }));
  });
}

function fillTable(
  table: JointTable,
  edges: readonly NumberedEdge[],
  options: ArrangeOptions,
  progress?: Progress,
): void {
  edges.forEach((one, i) => {
    progress?.(0.5 + (0.5 * i) / edges.length, 'trying every joint');
    for (const two of edges) {
      if (two.board <= one.board) continue;
      const reach = table.boards[one.board].mostSteps + table.boards[two.board].mostSteps;
      for (let apart = -reach; apart <= reach; apart++) {
        const { v, cue } = edgeJoint(one.edge, two.edge, apart * table.stepMm, options);
        const index = jointIndex(table, one.index, two.index, apart);
        table.v[index] = v ?? Number.NaN;
        table.cue[index] = cue === null ? 0 : tableCues.indexOf(cue) + 1;
      }
    }
  });
  progress?.(1, 'done');
}

function allLikeness(figures: Figures): MatchLikeness[] {
  const entries = [...figures];
  return entries.flatMap(([one, a], i) =>
    entries
      .slice(i + 1)
      .filter(([two]) => two >> 1 !== one >> 1)
      .flatMap(([two, b]) => matchLikeness(a, b, [one, two])),
  );
}
