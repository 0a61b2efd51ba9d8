/** Three ways a wood can look, by where its vessels sit in the year's ring. */
export type WoodSetting = 'ring-porous' | 'diffuse-porous' | 'softwood';

/** How a board lies in the log: rings nearly parallel, slanted or square to its wide face. */
export type WoodCut = 'flatsawn' | 'rift' | 'quartered';
