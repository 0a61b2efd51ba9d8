import { gaussianBlur } from '../filter/gaussianBlur.js';
import type { Plane } from '../image/plane.js';
import { structureTensorBlocks } from './structureTensorBlocks.js';
import type { TensorField } from './tensorField.js';

/**
 * Structure tensor on a coarse grid: where the grain runs, fast.
 *
 * J = G_rho * (grad I_sigma grad I_sigma^T), with the products averaged over factor x factor
 * pixels first and the rest of G_rho applied to those averages. About a tenth of the work of
 * `structureTensorExact`; directions differ by less than 0.1 deg in the mean.
 *
 * @param source luminance or its logarithm.
 * @param gradientSigmaPx sigma of the Gaussian derivatives, px, default 1.
 * @param integrationSigmaPx rho, px, default 6; below factor / 3.5 the averaging is all there is.
 * @param factor step of the grid, px, default 4.
 * @returns field of floor(size / factor) samples with stepPx = factor.
 * @throws SeamgrainError `cannotDo` when the picture is smaller than one step.
 */
export function structureTensor(
  source: Plane,
  { gradientSigmaPx = 1, integrationSigmaPx = 6, factor = 4 } = {},
): TensorField {
  const field = structureTensorBlocks(source, gradientSigmaPx, factor);
  const left = integrationSigmaPx ** 2 - (factor ** 2 - 1) / 12;
  const sigma = Math.sqrt(Math.max(left, 0)) / factor;
  if (sigma < 0.2) return field;
  const { width, height } = field;
  for (const data of [field.jxx, field.jxy, field.jyy]) {
    const plane = { width, height, data };
    gaussianBlur(plane, sigma, plane);
  }
  return field;
}
