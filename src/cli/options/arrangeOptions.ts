import { Option } from '@commander-js/extra-typings';
import { parseLengthMm } from '../../core/units/parseLengthMm.js';
import { manyOption } from './manyOption.js';
import { parseBoardList } from './parseBoardList.js';
import { parseBoards } from './parseBoards.js';
import { parseDistance } from './parseDistance.js';
import { parseKerf } from './parseKerf.js';
import { typedOption } from './typedOption.js';

/** Everything that an order of boards depends on besides their photos; `ArrangeFlags` reads it. */
export function arrangeOptions(): Option[] {
  return [
    typedOption('--joint <LENGTH>', 'what jointing takes from each edge (default 0mm)', lengthOf),
    typedOption(
      '--kerf <LENGTH>',
      'the saw cut that parted the boards, if they were one before the photos (default 0mm)',
      parseKerf,
    ),
    typedOption('--spare <LENGTH>', 'length each board has to slide (default 0mm)', lengthOf),
    typedOption('--distance <LENGTH>', 'viewing distance (default 600mm)', parseDistance),
    new Option('--no-colour', 'colour steps do not count: the photos were not taken in one light'),
    new Option(
      '--lay <HOW>',
      'boards that look like one face lie as they grew, or all lie where their joints show least (default as-grown)',
    ).choices(['as-grown', 'least-seen']),
    typedOption('--top <BOARD>', 'this board lies at the top, 1 for the first photo', one),
    typedOption('--bottom <BOARD>', 'this board lies at the bottom', one),
    manyOption(
      '--together <BOARDS>',
      'two boards that lie side by side, 2,5; may be repeated',
      two,
    ),
    new Option('--heart <WHICH>', 'heart sides up, or up and down by turns').choices([
      'up',
      'alternating',
    ]),
    typedOption(
      '--heart-faces <FACES>',
      'the face of each board that looked to the heart, in the order of the photos: A,B,?',
      (text) => parseBoardList(text, { A: 'A', B: 'B' }),
    ),
    new Option('--one-way', 'all boards plane the same way'),
    typedOption(
      '--planes <WAYS>',
      'the way each photographed face planes without tearing out: left,right,?',
      (text) => parseBoardList(text, { left: 'left', right: 'right' }),
    ),
    manyOption(
      '--book-match <BOARDS>',
      'a resawn pair opened like a book, 1,2, with its joint in the middle; one board alone stands beside its own mirror image',
      oneOrTwo,
    ),
    manyOption('--slip-match <BOARDS>', 'the same, slipped sideways instead of opened', oneOrTwo),
  ];
}

const lengthOf = (text: string) => parseLengthMm(text);
const one = (text: string) => parseBoards(text, 1, 1)[0];
const two = (text: string) => parseBoards(text, 2, 2);
const oneOrTwo = (text: string) => parseBoards(text, 1, 2);
