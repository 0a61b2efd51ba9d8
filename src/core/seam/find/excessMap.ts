import type { DiscordBand } from './discordMap.js';

/** Rows that a cell is measured against: clear of a seam at the cell, within the same figure, mm. */
const innerMm = 3.5;
const outerMm = 12;
/** Wood across the grain that makes a new witness, over the band's edge. */
const witnessOverEdge = 0.6;
const leastDiscord = 0.05;
/** Freedom of Student's law: a knot or a vessel is no proof. */
const freedom = 4;
/** Share of the usual energy that a cell without lines is taken to have. */
const energyFloor = 0.3;
/** What two sides a little out of step have: so many times the usual discord, strangers at most. */
const outOfStep = 2.5;
/** The most that one cell may say for a joint: a joint speaks along its length. */
const mostPerCell = 0.5;

/** ln likelihood ratios per cell, index column * rows + row; they sum over a line. */
export interface JointExcess {
  readonly strangers: Float32Array;
  readonly stepped: Float32Array;
}

/**
 * How much likelier the discord of every cell is at a joint than in the wood above and below it:
 * ln of the likelihood ratio of q = d / e under Student's law of scale m against scale D0, times the
 * cell's witnesses. m = 1: two sides with nothing in common; m = min(1, 5 D0): the same lines, a
 * little out of step. D0 is the discord 3.5 to 12 mm above or
 * below, whichever is more: how well lines can be carried here at all. Where they cannot (D0 near
 * 1: the middle of a cathedral) a cell says nothing either way.
 *
 * @param band cells of one band of spacings, index row * columns + column.
 */
export function excessMap(
  { edgeMm, d, e, crossed }: DiscordBand,
  columns: number,
  rowsPerMm: number,
): JointExcess {
  const rows = d.length / columns;
  const outer = Math.round(outerMm * rowsPerMm);
  const inner = Math.round(innerMm * rowsPerMm);
  const strangers = new Float32Array(d.length);
  const stepped = new Float32Array(d.length);
  const sd = new Float64Array(rows + 1);
  const se = new Float64Array(rows + 1);
  for (let c = 0; c < columns; c++) {
    const [left, right] = [Math.max(0, c - 1), Math.min(columns - 1, c + 1)];
    for (let y = 0; y < rows; y++) {
      sd[y + 1] = sd[y];
      se[y + 1] = se[y];
      for (let k = left; k <= right; k++) {
        sd[y + 1] += d[y * columns + k];
        se[y + 1] += e[y * columns + k];
      }
    }
    for (let y = 0; y < rows; y++) {
      const [a, b] = [Math.max(0, y - outer), Math.min(rows, y + outer + 1)];
      const [p, q] = [Math.max(a, y - inner), Math.min(b, y + inner + 1)];
      const above = se[p] - se[a];
      const below = se[b] - se[q];
      if (!(above + below > 0)) continue;
      const discord = Math.max((sd[p] - sd[a]) / (above + 1e-9), (sd[b] - sd[q]) / (below + 1e-9));
      const usual = Math.max(leastDiscord, Math.min(1, discord));
      const cells = (p - a + b - q) * (right - left + 1);
      const floor = (energyFloor * (above + below)) / cells;
      const i = y * columns + c;
      const ratio = (d[i] + floor * usual) / (e[i] + floor);
      const witnesses = crossed[i] / (witnessOverEdge * edgeMm);
      const none = logLaw(ratio, usual);
      const step = Math.min(1, outOfStep * usual);
      const out = c * rows + y;
      strangers[out] = Math.min(mostPerCell, witnesses * (logLaw(ratio, 1) - none));
      stepped[out] = Math.min(mostPerCell, witnesses * (logLaw(ratio, step) - none));
    }
  }
  return { strangers, stepped };
}

/** ln of Student's law of a squared deviation with this scale, up to a constant. */
const logLaw = (squared: number, scale: number) =>
  -0.5 * Math.log(scale) - ((freedom + 1) / 2) * Math.log1p(squared / (freedom * scale));
