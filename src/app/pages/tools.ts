/** What a tap on the panel does. */
export type Tool = 'look' | 'seamAlong' | 'seamAcross' | 'knot' | 'glare';

/** A tool's button and what to do with it. */
export const tools: Readonly<Record<Tool, { readonly button: string; readonly how: string }>> = {
  look: { button: 'Look', how: 'Tap a joint to read it.' },
  seamAlong: { button: 'Place a joint along', how: 'Tap where the joint runs along the panel.' },
  seamAcross: { button: 'Place a crosscut', how: 'Tap where the crosscut runs across the panel.' },
  knot: { button: 'Leave a knot out', how: 'Tap the middle of the knot.' },
  glare: { button: 'Leave glare out', how: 'Tap the middle of the glare.' },
};
