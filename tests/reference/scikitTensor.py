"""Second implementation of the structure tensor: scikit-image on a small drawn board.

Run once, output committed:
    apt-get install python3-skimage && /usr/bin/python3 tests/reference/scikitTensor.py

The picture is drawn here by a formula of its own (bent lines of changing width, a second system
of lines, noise), stored as 8-bit levels. The tensor is scikit-image's structure_tensor and
structure_tensor_eigenvalues; only its Sobel derivatives are replaced by scipy's Gaussian
derivatives, the kernels that the product uses. Angles are directions of least change in degrees
from +x towards +y (down).
"""

import base64
import json
import pathlib

import numpy
import scipy
import skimage
from scipy import ndimage
from skimage.feature import corner

HERE = pathlib.Path(__file__).parent
WIDTH, HEIGHT = 240, 176
BORDER, STEP = 40, 8


def draw():
    y, x = numpy.mgrid[:HEIGHT, :WIDTH].astype(float)
    bent = y + 14 * numpy.sin(x / 47 + 0.6) + 0.12 * x + 4 * numpy.sin(y / 23 + x / 61)
    spacing = 9 + 2.5 * numpy.cos(bent / 38)
    lines = numpy.cos(2 * numpy.pi * bent / spacing.mean() + 1.3 * numpy.sin(bent / 17))
    fibre = 0.25 * numpy.cos(2 * numpy.pi * (y + 0.05 * x) / 4.3)
    noise = numpy.random.default_rng(20240).normal(0, 0.25, (HEIGHT, WIDTH))
    grey = 130 + 38 * (0.8 * lines + fibre + noise)
    return numpy.clip(numpy.rint(grey), 0, 255).astype(numpy.uint8)


def tensor(image, gradient_sigma, integration_sigma):
    def gaussian_derivatives(picture, mode, cval):
        return [
            ndimage.gaussian_filter(picture, gradient_sigma, order=order, mode=mode, truncate=4)
            for order in ((1, 0), (0, 1))
        ]

    corner._compute_derivatives = gaussian_derivatives
    rows, mixed, columns = skimage.feature.structure_tensor(
        image, sigma=integration_sigma, mode="reflect", order="rc"
    )
    return columns, mixed, rows


def describe(xx, xy, yy):
    large, small = skimage.feature.structure_tensor_eigenvalues(numpy.array([yy, xy, xx]))
    angle = numpy.degrees(0.5 * numpy.arctan2(-2 * xy, yy - xx))
    coherence = (large - small) / (large + small)
    return angle, coherence


def rounded(values, digits):
    return [round(float(v), digits) for v in numpy.ravel(values)]


def main():
    levels = draw()
    image = levels / 255.0
    cases = []
    for gradient_sigma, integration_sigma in ((1, 6), (1.5, 6), (3, 9)):
        parts = tensor(image, gradient_sigma, integration_sigma)
        rows = numpy.arange(BORDER, HEIGHT - BORDER, STEP)
        columns = numpy.arange(BORDER, WIDTH - BORDER, STEP)
        angle, coherence = describe(*parts)
        at = numpy.ix_(rows, columns)
        # Centres of 4 x 4 px blocks lie between pixels: mean of the four pixels around.
        between = [
            (p[:-1, :-1] + p[1:, :-1] + p[:-1, 1:] + p[1:, 1:]) / 4 for p in parts
        ]
        block = numpy.ix_(rows + 1, columns + 1)
        block_angle, block_coherence = describe(*[p[block] for p in between])
        cases.append(
            {
                "gradientSigmaPx": gradient_sigma,
                "integrationSigmaPx": integration_sigma,
                "pixelAngleDeg": rounded(angle[at], 5),
                "pixelCoherence": rounded(coherence[at], 5),
                "blockAngleDeg": rounded(block_angle, 5),
                "blockCoherence": rounded(block_coherence, 5),
            }
        )
    out = {
        "provenance": "tests/reference/scikitTensor.py with scikit-image "
        f"{skimage.__version__}, scipy {scipy.__version__}, numpy {numpy.__version__}",
        "width": WIDTH,
        "height": HEIGHT,
        "levelsBase64": base64.b64encode(levels.tobytes()).decode(),
        "grid": {"fromPx": BORDER, "stepPx": STEP, "columns": len(columns), "rows": len(rows)},
        "cases": cases,
    }
    (HERE / "scikitTensor.json").write_text(json.dumps(out) + "\n")


main()
