import {
  defaultForecastOptions,
  type ForecastOptions,
  type ImaginedWood,
} from '../../core/pipeline/forecastOptions.js';
import type { ImagineFlags } from '../options/imagineOptions.js';
import type { ForecastFlags } from './forecastFlags.js';

/** Year rings of unknown wood, mm: within the medians of the tree-ring data bank. */
const usualRingWidthMm = 2;

/** What the flags ask the forecast to do; `imagined` are the faces to compare with. */
export function forecastInput(
  flags: ForecastFlags,
  imagined: readonly ImaginedWood[],
): ForecastOptions {
  const usual = defaultForecastOptions;
  return {
    distanceMm: flags.distance ?? usual.distanceMm,
    kerfMm: flags.kerf ?? usual.kerfMm,
    dressMm: flags.dress ?? usual.dressMm,
    ripsMm: flags.rip ?? [],
    front: flags.front ?? null,
    within: flags.within ?? null,
    marginMm: flags.margin ?? null,
    ends: flags.ends ?? usual.ends,
    eitherWayUp: flags.eitherWayUp ?? false,
    places: flags.places ?? usual.places,
    spareMm: flags.spare ?? usual.spareMm,
    revealMm: flags.reveal ?? usual.revealMm,
    ringAngleDeg: flags.ringAngle ?? null,
    ringWidthMm: flags.ringWidth ?? null,
    imagine: imagined,
    leftOut: flags.leaveOut ?? [],
    thorough: flags.thorough ?? false,
  };
}

/** The wood that `--imagine` asks for, one for each angle. */
export function imaginedWoods(flags: ImagineFlags): ImaginedWood[] {
  return (flags.imagine ?? []).map((ringAngleDeg) => ({
    ringAngleDeg,
    ringWidthMm: flags.ringWidth ?? usualRingWidthMm,
    contrast: flags.contrast ?? 1,
    setting: flags.wood ?? 'diffuse-porous',
    seed: flags.seed ?? 1,
  }));
}
