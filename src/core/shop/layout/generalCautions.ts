/**
 * Cautions for the whole job, printed with every sequence.
 * Common practice, no published source: they defer to those who know the machine.
 */
export const generalCautions: readonly string[] = [
  'The saw’s manual, local codes and trained practice come before this sheet.',
  'Guard, riving knife and sharp blade; push blocks within reach before the saw starts.',
  'Bowed or twisted stock never runs against the fence; short pieces go on a sled with a stop.',
  'Dust extraction, mask, eye and hearing protection. No gloves at a running blade.',
];
