import type { OpenCv } from '../../src/vision/openCv.js';

type Maker = new (...args: never[]) => { delete(): void };

/** The same OpenCV, with a count of what was made and not yet freed. */
export function countingOpenCv(cv: OpenCv): { cv: OpenCv; alive(): number; made(): number } {
  let made = 0;
  let freed = 0;
  const counted = <T extends Maker>(kind: T): T =>
    new Proxy(kind, {
      construct(target, args) {
        const object = Reflect.construct(target, args) as { delete(): void };
        const free = object.delete.bind(object);
        made++;
        object.delete = () => {
          freed++;
          free();
        };
        return object;
      },
    });
  const counting = Object.create(cv) as OpenCv;
  Object.defineProperty(counting, 'Mat', { value: counted(cv.Mat) });
  Object.defineProperty(counting, 'MatVector', { value: counted(cv.MatVector) });
  return { cv: counting, alive: () => made - freed, made: () => made };
}
