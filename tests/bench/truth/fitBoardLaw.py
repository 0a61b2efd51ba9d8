"""Generalised extreme value law of the numbers on standard input (needs python3-scipy)."""

import sys

import numpy
from scipy import stats

values = numpy.array([float(line) for line in sys.stdin])
shape, place, scale = stats.genextreme.fit(values, 0)
distance, p = stats.kstest(values, "genextreme", (shape, place, scale))[:2]
print(f"n {len(values)}: shape {-shape:.3f}, place {place:.2f}, scale {scale:.2f}")
print(f"Kolmogorov-Smirnov distance {distance:.3f}, p {p:.2f}")
