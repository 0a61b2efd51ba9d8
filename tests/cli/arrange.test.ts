import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import type { ArrangeResult } from '../../src/core/results/arrangeResult.js';
import { runCliHere } from '../support/runCliHere.js';

const boards = [1, 2, 3].map((n) => `samples/board-${n}.jpg`);
// Half of the true size: as good for rules, and quicker to read.
const size = ['--size', '220mmx40mm', '--joint', '0.5mm'];
const arrange = async (...args: string[]) => {
  const { status, out } = await runCliHere('arrange', ...args, ...size, '--json');
  return { status, result: JSON.parse(out) as ArrangeResult, error: JSON.parse(out) };
};

describe('arrange', () => {
  it('lays every board once, tells of every joint, and writes the panel', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'seamgrain-'));
    const { status, result } = await arrange(...boards, '--out', folder);
    expect(status).toBe(0);
    expect(result.schema).toBe('seamgrain/arrange@1');
    expect(result.order.map((board) => board.photo).sort()).toEqual(boards);
    expect(result.joints).toHaveLength(2);
    expect(result.exact).toBe(true);
    const cost = result.joints.reduce((sum, joint) => sum + (joint.v ?? 0) ** 3, 0);
    expect(result.totalCost).toBeCloseTo(cost, 6);
    expect(result.leastCost).toBeLessThanOrEqual(result.totalCost + 1e-9);
    const read = (name: string) => readFileSync(join(folder, name), 'utf8');
    expect(JSON.parse(read('arrange.json'))).toEqual(result);
    for (const name of ['arranged.svg', 'report.html']) {
      for (const n of [1, 2, 3]) expect(read(name)).toContain(`>board-${n}<`);
    }
    expect(read('report.html')).not.toMatch(/(href|src)="(?!data:|#)/);
    const { width } = await sharp(join(folder, 'arranged.png')).metadata();
    expect(width).toBeGreaterThan(1000);
    rmSync(folder, { recursive: true });
  });

  it('costs the same whatever order the boards are named in', async () => {
    const there = await arrange(...boards);
    const back = await arrange(...[...boards].reverse());
    expect(back.result.totalCost).toBeCloseTo(there.result.totalCost, 9);
  });

  it('keeps rules given on the command line, and says what they cost', async () => {
    const free = await arrange(...boards);
    const top = await arrange(...boards, '--top', '2', '--planes', 'left,right,left', '--one-way');
    expect(top.result.order[0]!.board).toBe(2);
    const ways = top.result.order.map(({ planesTowards }) => planesTowards);
    expect(new Set(ways).size).toBe(1);
    expect(top.result.conflicts).toEqual([]);
    expect(top.result.totalCost).toBeGreaterThanOrEqual(free.result.totalCost - 1e-9);
  });

  it('stands a board beside its imagined mate, in the middle', async () => {
    const { result } = await arrange(...boards, '--book-match', '1');
    const middle = result.order.slice(1, 3);
    expect(middle.map(({ photo }) => photo)).toEqual([boards[0], boards[0]]);
    expect(middle.filter(({ isImagined }) => isImagined)).toHaveLength(1);
  });

  it('refuses rules that contradict each other or speak of boards that are not there', async () => {
    for (const rules of [
      ['--top', '1', '--bottom', '1'],
      ['--together', '1,4'],
      ['--together', '2'],
      ['--heart', 'up'],
      ['--heart', 'up', '--heart-faces', 'A,B'],
      ['--one-way', '--planes', 'left,up,right'],
      ['--top', 'oak'],
    ]) {
      const { status, error } = await arrange(...boards, ...rules);
      expect([rules, status]).toEqual([rules, 2]);
      expect(error.schema).toBe('seamgrain/error@1');
      expect(error.hint.length).toBeGreaterThan(0);
    }
  });

  it('refuses one board, a board of three faces and a length without a unit', async () => {
    const one = await arrange(boards[0]!);
    expect([one.status, one.error.code]).toEqual([1, 'badPanel']);
    const three = await arrange('a.jpg+b.jpg+c.jpg');
    expect(three.status).toBe(2);
    const bare = await runCliHere('arrange', ...boards, '--size', '440mmx80mm', '--joint', '1');
    expect(bare.status).toBe(2);
  });
});
