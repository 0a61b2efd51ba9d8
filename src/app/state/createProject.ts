import type { Photo, Project } from './project.js';

/** A new, empty project with a full kerf and arm's-length viewing. */
export function createProject(id: string, name: string, createdAt: string): Project {
  return {
    id,
    name,
    createdAt,
    settings: {
      unit: 'inch',
      distanceMm: 600,
      kerfMm: 3.175,
      dressMm: 0,
      trimMm: 0,
      jointMm: 0.8,
      boardSpareMm: 0,
      layBoards: 'asGrown',
      heartSides: 'free',
      planeOneWay: false,
      candidatesFor: 'rip',
      frontWidthMm: 254,
      frontHeightMm: 101.6,
      ruleMarks: 32,
      frontWood: 'same',
      endPieces: 'stay',
      roughMm: null,
      finishedMm: null,
      paper: 'Letter',
    },
    photos: [],
    boardPairs: [],
    imaginedBoards: [],
    shownPhotoId: null,
    gap: {
      species: 'hard maple',
      ringAngle: 'flatsawn',
      shop: '35% at 70F',
      home: '80% at 70F',
      surround: 'framed',
      revealMm: 0.8,
      place: 'top',
    },
    measures: [],
  };
}

/** A photo as it first comes in: nothing pinned, nothing corrected. */
export function createPhoto(
  id: string,
  name: string,
  imageId: string,
  widthPx: number,
  heightPx: number,
): Photo {
  return {
    id,
    name,
    imageId,
    widthPx,
    heightPx,
    scale: null,
    findSeams: true,
    seams: [],
    droppedSeams: [],
    leftOut: [],
    frontPlace: null,
    turned: false,
    slideMm: 0,
    boardPlace: null,
    backOf: null,
    backUp: false,
    heartFace: null,
    planes: null,
    ringTangents: [],
    endId: null,
    endSide: 'left',
  };
}
