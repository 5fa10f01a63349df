# Three Ogden terms fitted to points "e,stretch,stress" of a file from the starts of another, with SciPy's least squares and its slopes by formula.
# e is the exponent of the stretch in the free direction. Prints "rms <MPa>", "value <mu or alpha>" six times, and "took <s>" for each run.
import sys
import time

import numpy
from scipy.optimize import least_squares

e, stretch, stress = numpy.loadtxt(sys.argv[1], delimiter=",", unpack=True)
starts = numpy.loadtxt(sys.argv[2], delimiter=",")
log = numpy.log(stretch)


def columns(alphas):
    return numpy.stack([(numpy.exp(a * log) - numpy.exp(e * a * log)) / stretch for a in alphas], axis=1)


def residuals(p):
    return columns(p[3:]) @ p[:3] - stress


def slopes(p):
    by_alpha = numpy.stack([m * log * (numpy.exp(a * log) - e * numpy.exp(e * a * log)) / stretch for m, a in zip(p[:3], p[3:])], axis=1)
    return numpy.concatenate((columns(p[3:]), by_alpha), axis=1)


def fit():
    best = None
    for alphas in starts:
        first = numpy.linalg.lstsq(columns(alphas), stress, rcond=None)[0]
        try:
            found = least_squares(residuals, numpy.concatenate((first, alphas)), jac=slopes, x_scale="jac", ftol=1e-12, xtol=1e-12, gtol=1e-12)
        except ValueError:  # it left the numbers
            continue
        if best is None or found.cost < best.cost:
            best = found
    return best


numpy.seterr(all="ignore")
for _ in range(int(sys.argv[3])):
    begun = time.perf_counter()
    best = fit()
    print("took", time.perf_counter() - begun)
print("rms", numpy.sqrt(2 * best.cost / len(stress)))
for j in numpy.argsort(-best.x[3:]):
    print("value", best.x[j])
    print("value", best.x[3 + j])
