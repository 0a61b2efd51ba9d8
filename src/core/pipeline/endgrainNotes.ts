import type { HandPlaced } from '../board/endGrain/handPlaced.js';
import type { PithFound } from '../board/endGrain/pithFromRings.js';
import type { SawMarks } from '../board/endGrain/readEnd.js';

/** How the reading of an end went. */
export type EndgrainReading =
  | { readonly kind: 'unread'; readonly sawMarks: SawMarks }
  | {
      readonly kind: 'read';
      readonly sawMarks: SawMarks;
      readonly pith: PithFound;
      readonly placed: HandPlaced | null;
      readonly withSpecies: boolean;
    };

const standard =
  'Cut by the Architectural Woodwork Standards (2009, App. B): flatsawn up to 30 deg, rift 30 to 60, quartered 60 to 90.';

const sawNotes: { readonly [marks in SawMarks]: readonly string[] } = {
  none: [],
  'taken out': ['Saw marks were found and taken out before the rings were read.'],
  'perhaps the rings': [
    'The lines on this end run as exactly as a saw’s marks do, and no others show. If the end is as the saw left it, they may be its marks: plane it clean and take the photo again, or lay a tangent along a ring by hand.',
  ],
};

/** What an end's answer rests on and what it could not tell, in the user's words. */
export function endgrainNotes(
  photoNotes: readonly string[],
  reading: EndgrainReading,
): readonly string[] {
  const saw = sawNotes[reading.sawMarks];
  if (reading.kind === 'unread') {
    return [
      ...photoNotes,
      ...saw,
      'Cannot tell: no rings stand out that run about one centre. Plane or sand the end clean, take the photo closer, or lay a tangent along a ring by hand.',
    ];
  }
  return [...photoNotes, ...saw, ...byHand(reading.placed), ...pithNotes(reading), standard];
}

function byHand(placed: HandPlaced | null): string[] {
  if (!placed) return [];
  if (placed.pith)
    return ['The pith was placed by hand; the rings are taken to be circles about it.'];
  return placed.tangents.length > 1
    ? ['The rings follow the tangents laid by hand, as circles about one pith.']
    : [
        'The ring angle is that of the tangent laid by hand, taken to hold across the whole width; lay a second one near the other edge to follow the bend.',
      ];
}

function pithNotes({ pith, placed }: Extract<EndgrainReading, { kind: 'read' }>): string[] {
  if (pith.kind === 'told') return [];
  if (placed && placed.tangents.length === 1) return ['Cannot tell the pith from one tangent.'];
  return [
    'Cannot tell how far away the pith lies to a quarter of the distance: the rings run too nearly straight for that, or wave too much.',
  ];
}
