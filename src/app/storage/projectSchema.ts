import { z } from 'zod';
import type { Project } from '../state/project.js';

// The page's policy forbids building functions from text, which zod would otherwise try.
z.config({ jitless: true });

const point = z.object({ x: z.number(), y: z.number() });
const line = z.object({ x1Mm: z.number(), y1Mm: z.number(), x2Mm: z.number(), y2Mm: z.number() });
const positive = z.number().positive();

const scale = z.discriminatedUnion('kind', [
  z.object({
    kind: z.literal('size'),
    widthMm: positive,
    heightMm: positive,
    cornersPx: z.tuple([point, point, point, point]).nullable(),
  }),
  z.object({ kind: z.literal('pxPerMm'), pxPerMm: positive }),
  z.object({ kind: z.literal('known'), fromPx: point, toPx: point, lengthMm: positive }),
]);

const leftOut = z.object({
  id: z.string(),
  kind: z.enum(['knot', 'glare']),
  xMm: z.number(),
  yMm: z.number(),
  radiusXMm: positive,
  radiusYMm: positive,
});

const photo = z.object({
  id: z.string(),
  name: z.string(),
  imageId: z.string(),
  widthPx: positive,
  heightPx: positive,
  scale: scale.nullable(),
  findSeams: z.boolean(),
  seams: z.array(z.object({ id: z.string(), line })),
  droppedSeams: z.array(line),
  leftOut: z.array(leftOut),
  frontPlace: z.object({ xMm: z.number(), yMm: z.number() }).nullable(),
  turned: z.boolean(),
  slideMm: z.number().default(0),
  boardPlace: z.enum(['top', 'bottom']).nullable().default(null),
  backOf: z.string().nullable().default(null),
  backUp: z.boolean().default(false),
  heartFace: z.enum(['A', 'B']).nullable().default(null),
  planes: z.enum(['left', 'right']).nullable().default(null),
  ringTangents: z.array(line).default([]),
  endId: z.string().nullable().default(null),
  endSide: z.enum(['left', 'right']).default('left'),
});

const settings = z.object({
  unit: z.enum(['inch', 'millimetre']),
  distanceMm: positive,
  kerfMm: z.number().nonnegative(),
  dressMm: z.number().nonnegative(),
  trimMm: z.number().nonnegative(),
  jointMm: z.number().nonnegative(),
  boardSpareMm: z.number().nonnegative().default(0),
  layBoards: z.enum(['asGrown', 'leastSeen']).default('asGrown'),
  heartSides: z.enum(['free', 'up', 'alternating']).default('free'),
  planeOneWay: z.boolean().default(false),
  candidatesFor: z.enum(['rip', 'front']).default('rip'),
  frontWidthMm: positive,
  frontHeightMm: positive,
  ruleMarks: z.union([z.literal(16), z.literal(32), z.literal(64)]),
  frontWood: z.enum(['same', 'contrasting', 'veneered']),
  endPieces: z.enum(['stay', 'slide']),
  roughMm: positive.nullable(),
  finishedMm: positive.nullable(),
  paper: z.enum(['A4', 'Letter']),
});

const imaginedBoard = z.object({
  id: z.string(),
  cut: z.enum(['flatsawn', 'rift', 'quartered']),
  ringWidthMm: z.number().min(0.4).max(6),
  contrast: positive.max(4),
  wood: z.enum(['ring-porous', 'diffuse-porous', 'softwood']),
  seed: z.number().int().nonnegative(),
  widthMm: positive,
  heightMm: positive,
});

const gap = z.object({
  species: z.string(),
  ringAngle: z.enum(['flatsawn', 'rift', 'quartered']),
  shop: z.string(),
  home: z.string(),
  surround: z.enum(['framed', 'solid']),
  revealMm: z.number().nonnegative(),
  place: z.enum(['top', 'bottom', 'split']),
});

/** What a kept or exported project must look like, version 1; see docs/file-format.md. */
export const projectSchema: z.ZodType<Project> = z.object({
  id: z.string().min(1),
  name: z.string(),
  createdAt: z.string(),
  settings,
  photos: z.array(photo),
  boardPairs: z
    .array(
      z.object({
        ids: z.tuple([z.string(), z.string()]),
        kind: z.enum(['beside', 'book', 'slip']),
      }),
    )
    .default([]),
  imaginedBoards: z.array(imaginedBoard).default([]),
  shownPhotoId: z.string().nullable(),
  gap,
  measures: z.array(
    z.object({
      piece: z.string(),
      widthMm: positive.nullable(),
      lengthMm: positive.nullable(),
    }),
  ),
});
