import shipped from 'virtual:samples';
import type { PhotoScale } from '../core/image/photoScale.js';
import type { Settings } from './state/project.js';
import type { JobPage } from './state/route.js';

/** A shipped photograph, or several, with what is known of them. */
export interface Sample {
  /** Of the project that it becomes. */
  readonly id: string;
  readonly title: string;
  readonly about: string;
  readonly page: JobPage;
  readonly photos: readonly { readonly file: string; readonly scale: PhotoScale }[];
  readonly settings?: Partial<Settings>;
}

interface Story extends Omit<Sample, 'photos' | 'id'> {
  readonly names: readonly string[];
}

/** The commission told by the samples, in the order of the start page. */
const stories: readonly Story[] = [
  {
    names: ['dry-clamp-flatsawn'],
    title: 'Flatsawn oak, ripped twice',
    about: 'An eighth of an inch is gone at each joint. Where does it show?',
    page: 'joints',
  },
  {
    names: ['dry-clamp-quartered'],
    title: 'Quartered oak, the same two rips',
    about: 'The lines run along the rip: what did the eighth cost here?',
    page: 'joints',
  },
  {
    names: ['drawer-front-pine'],
    title: 'Pine, with a drawer front cut from it',
    about: 'Rails, end pieces and the front, back together.',
    page: 'joints',
  },
  {
    names: ['mixed-boards'],
    title: 'Three boards of three trees',
    about: 'One panel of rift, flatsawn and quartered stock.',
    page: 'joints',
  },
  {
    names: ['uncut-maple'],
    title: 'Maple, before the rip',
    about: 'Where should the drawer front come from?',
    page: 'rip',
    settings: { frontWidthMm: 280, frontHeightMm: 90 },
  },
  {
    names: ['board-1', 'board-2', 'board-3', 'board-4', 'board-5'],
    title: 'Five boards, shuffled',
    about: 'Which belongs beside which, and which way round?',
    page: 'boards',
  },
  {
    names: ['end-grain'],
    title: 'The end of an oak board',
    about: 'Where did the pith lie, and how was it sawn?',
    page: 'end',
  },
];

/** The samples that this build ships. */
export const samples: readonly Sample[] = stories.flatMap(({ names, ...story }) => {
  const photos = names.flatMap((name) => {
    const found = shipped.find((each) => each.name === name);
    if (!found?.widthMm || !found.heightMm) return [];
    const { widthMm, heightMm, cornersPx } = found;
    return [{ file: found.photo, scale: { kind: 'size', widthMm, heightMm, cornersPx } as const }];
  });
  return photos.length === names.length ? [{ ...story, id: `sample-${names[0]}`, photos }] : [];
});
