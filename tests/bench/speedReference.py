"""References of `npm run bench:speed`, timed on the picture that the bench draws.

Usage: /usr/bin/python3 speedReference.py PICTURE.gray WIDTH HEIGHT REPEATS
(Debian: apt-get install python3-opencv python3-skimage). Prints one JSON document: wall and
processor milliseconds of every repeat of every method, one thread each.
"""

import json
import os
import sys
import time

for name in ("OMP_NUM_THREADS", "OPENBLAS_NUM_THREADS", "MKL_NUM_THREADS"):
    os.environ[name] = "1"

import cv2
import numpy
import skimage
from skimage.feature import structure_tensor

path, width, height, repeats = sys.argv[1], *map(int, sys.argv[2:5])
cv2.setNumThreads(1)
levels = numpy.fromfile(path, numpy.uint8).reshape(height, width)
image = levels.astype(numpy.float32) / numpy.float32(255)


def corner_eigen():
    return cv2.cornerEigenValsAndVecs(image, 21, 3)


def opencv_same_kernels():
    smooth = cv2.getGaussianKernel(9, 1, cv2.CV_32F)
    x = numpy.arange(-4, 5, dtype=numpy.float32).reshape(-1, 1)
    slope = smooth * x / float((smooth * x * x).sum())
    gx = cv2.sepFilter2D(image, cv2.CV_32F, slope, smooth, borderType=cv2.BORDER_REFLECT)
    gy = cv2.sepFilter2D(image, cv2.CV_32F, smooth, slope, borderType=cv2.BORDER_REFLECT)
    return [
        cv2.GaussianBlur(product, (49, 49), 6, borderType=cv2.BORDER_REFLECT)
        for product in (gx * gx, gx * gy, gy * gy)
    ]


def scikit():
    rows, mixed, columns = structure_tensor(image, sigma=6, mode="reflect", order="rc")
    return 0.5 * numpy.arctan2(-2 * mixed, rows - columns)


def timed(method):
    wall, processor = time.perf_counter(), time.process_time()
    method()
    return {
        "wallMs": 1000 * (time.perf_counter() - wall),
        "processorMs": 1000 * (time.process_time() - processor),
    }


times = {}
for method in (corner_eigen, opencv_same_kernels, scikit):
    method()
    times[method.__name__] = [timed(method) for _ in range(repeats)]
versions = {"OpenCV": cv2.__version__, "scikit-image": skimage.__version__}
print(json.dumps({"times": times, "versions": versions}))
