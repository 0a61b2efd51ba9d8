import { gaussianBlur } from '../filter/gaussianBlur.js';
import { gaussianGradient } from '../filter/gaussianGradient.js';
import { createPlane, type Plane } from '../image/plane.js';
import type { TensorField } from './tensorField.js';

/**
 * Structure tensor at every pixel, by the book: the yardstick of the fast `structureTensor`.
 *
 * J = G_rho * (grad I_sigma grad I_sigma^T); nothing averaged, nothing left out, ten times slower.
 *
 * @param source luminance or its logarithm.
 * @param gradientSigmaPx sigma of the Gaussian derivatives, px, above 0.
 * @param integrationSigmaPx rho, px, above 0.
 * @returns field with stepPx = 1.
 * Source: Bigun & Granlund 1987, Proc. 1st ICCV, 433-438; Forstner & Gulch 1987.
 */
export function structureTensorExact(
  source: Plane,
  gradientSigmaPx: number,
  integrationSigmaPx: number,
): TensorField {
  const { width, height, gx, gy } = gaussianGradient(source, gradientSigmaPx);
  const smoothProduct = (a: Float32Array, b: Float32Array) => {
    const product = createPlane(width, height);
    for (let i = 0; i < a.length; i++) product.data[i] = a[i] * b[i];
    return gaussianBlur(product, integrationSigmaPx, product).data;
  };
  return {
    width,
    height,
    stepPx: 1,
    jxx: smoothProduct(gx, gx),
    jxy: smoothProduct(gx, gy),
    jyy: smoothProduct(gy, gy),
  };
}
