import { beforeEach, describe, expect, it } from 'vitest';
import { removePhoto } from '../../src/app/actions/boardChanges.js';
import { imagineBoard, nameEnd, removeImagined } from '../../src/app/actions/candidateChanges.js';
import { candidateBoards } from '../../src/app/analysis/candidateBoards.js';
import { createPhoto, createProject } from '../../src/app/state/createProject.js';
import { currentProject, showProject, undoChange } from '../../src/app/state/workbench.js';

const scale = { kind: 'pxPerMm', pxPerMm: 1 } as const;
const photos = ['a', 'b', 'end'].map((id) => ({ ...createPhoto(id, id, id, 10, 10), scale }));
const boardPairs = [{ ids: ['a', 'end'] as const, kind: 'beside' as const }];
const names = () => candidateBoards(currentProject()!).map(({ name }) => name);
const endOf = (id: string) => currentProject()!.photos.find((photo) => photo.id === id)!.endId;

describe('the end of a candidate', () => {
  beforeEach(() => showProject({ ...createProject('p', 'p', ''), photos, boardPairs }));

  it('is no candidate, is of one board only and lies beside none; undo gives all back', () => {
    nameEnd('a', 'end');
    expect(names()).toEqual(['a', 'b']);
    expect(currentProject()!.boardPairs).toEqual([]);
    nameEnd('b', 'end');
    expect([endOf('a'), endOf('b')]).toEqual([null, 'end']);
    undoChange();
    undoChange();
    expect(names()).toEqual(['a', 'b', 'end']);
    expect(currentProject()!.boardPairs).toEqual(boardPairs);
  });

  it('never leaves the page without a candidate: two cannot be the ends of each other', () => {
    nameEnd('a', 'end');
    nameEnd('end', 'a');
    expect(names().length).toBeGreaterThan(1);
    expect(endOf('a')).toBeNull();
  });

  it('goes with its photo', () => {
    nameEnd('a', 'end');
    removePhoto('end');
    expect(endOf('a')).toBeNull();
  });

  it('leaves drawn boards names of their own', () => {
    for (const _ of [1, 2]) imagineBoard({ widthMm: 400, heightMm: 100 });
    expect(new Set(names()).size).toBe(5);
    removeImagined(currentProject()!.imaginedBoards[0]!.id);
    expect(names()).toHaveLength(4);
  });
});
