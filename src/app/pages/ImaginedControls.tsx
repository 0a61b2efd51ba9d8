import { changeImagined, removeImagined } from '../actions/candidateChanges.js';
import { Choice } from '../parts/Choice.js';
import type { ImaginedBoard, LengthUnit } from '../state/project.js';

/** Widths of the year rings, mm, as a maker counts them. */
const rings = {
  inch: [
    ['1', '25 to the inch'],
    ['2', '13 to the inch'],
    ['4', '6 to the inch'],
  ],
  millimetre: [
    ['1', '1 mm wide'],
    ['2', '2 mm wide'],
    ['4', '4 mm wide'],
  ],
} as const;

export interface ImaginedControlsProps {
  readonly board: ImaginedBoard;
  readonly unit: LengthUnit;
}

/** What a drawn board is: how it would be sawn, of what wood, and another of the same kind. */
export function ImaginedControls({ board, unit }: ImaginedControlsProps) {
  const { id, cut, ringWidthMm, contrast, wood, seed } = board;
  return (
    <>
      <Choice
        label="Sawn"
        value={cut}
        options={[
          ['flatsawn', 'flatsawn'],
          ['rift', 'rift'],
          ['quartered', 'quartered'],
        ]}
        onChange={(to) => changeImagined(id, { cut: to })}
      />
      <Choice
        label="Rings"
        value={String(ringWidthMm)}
        options={rings[unit]}
        onChange={(mm) => changeImagined(id, { ringWidthMm: Number(mm) })}
      />
      <Choice
        label="Ring lines"
        value={String(contrast)}
        options={[
          ['0.5', 'faint'],
          ['1', 'as usual'],
          ['1.5', 'strong'],
        ]}
        onChange={(strength) => changeImagined(id, { contrast: Number(strength) })}
      />
      <Choice
        label="Like"
        value={wood}
        options={[
          ['diffuse-porous', 'maple or cherry'],
          ['ring-porous', 'oak or ash'],
          ['softwood', 'pine or fir'],
        ]}
        onChange={(to) => changeImagined(id, { wood: to })}
      />
      <button type="button" onClick={() => changeImagined(id, { seed: seed + 1 })}>
        From another tree
      </button>
      <button type="button" onClick={() => removeImagined(id)}>
        Take it away
      </button>
    </>
  );
}
