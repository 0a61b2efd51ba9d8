import { describe, expect, it } from 'vitest';
import type { ArrangeResult } from '../../src/core/results/arrangeResult.js';
import { runCliHere } from '../support/runCliHere.js';

const boards = [1, 2, 3].map((n) => `samples/board-${n}.jpg`);
const size = ['--size', '440mmx80mm', '--joint', '1mm'];

describe('arrange', () => {
  it('lays every board once and tells of every joint', async () => {
    const { status, out } = await runCliHere('arrange', ...boards, ...size, '--json');
    const result: ArrangeResult = JSON.parse(out);
    expect(status).toBe(0);
    expect(result.schema).toBe('seamgrain/arrange@1');
    expect(result.order.map((board) => board.photo).sort()).toEqual(boards);
    expect(result.joints).toHaveLength(2);
    expect(result.exact).toBe(true);
    const cost = result.joints.reduce((sum, joint) => sum + (joint.v ?? 0) ** 3, 0);
    expect(result.totalCost).toBeCloseTo(cost, 6);
  });

  it('costs nearly the same whatever order the boards are named in', async () => {
    const costOf = async (names: string[]) => {
      const { out } = await runCliHere('arrange', ...names, ...size, '--json');
      return (JSON.parse(out) as ArrangeResult).totalCost;
    };
    const back = await costOf([...boards].reverse());
    // A joint read from its other side differs by a few per cent (which board is A).
    expect(Math.abs(back / (await costOf(boards)) - 1)).toBeLessThan(0.1);
  });

  it('refuses a board of three faces and a length without a unit', async () => {
    const three = await runCliHere('arrange', 'a.jpg+b.jpg+c.jpg', ...size, '--json');
    expect(three.status).toBe(2);
    expect(JSON.parse(three.out).schema).toBe('seamgrain/error@1');
    const bare = await runCliHere('arrange', ...boards, '--size', '440mmx80mm', '--joint', '1');
    expect(bare.status).toBe(2);
  });
});
