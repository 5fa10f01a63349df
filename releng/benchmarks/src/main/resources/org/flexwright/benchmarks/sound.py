# Impacts in a sound, with SciPy: high-pass, loudness of half milliseconds, a background, and the onset by Akaike's criterion.
# Prints "impact <s>" for each impact and "took <s>" for each run.
import sys
import time

import numpy
from scipy.io import wavfile
from scipy.signal import lfilter


def impacts(file):
    rate, samples = wavfile.read(file)
    x = samples / 32768.0
    a = 1 / (1 + 2 * numpy.pi * 250 / rate)
    y = x
    for _ in range(3):
        y = lfilter([a, -a], [1, -a], y)
    w = rate // 2000
    n = len(y) // w
    energy = (y[:n * w].reshape(n, w) ** 2).mean(axis=1)
    block = 20
    blocks = energy[:n // block * block].reshape(-1, block).mean(axis=1)
    background = numpy.empty(n)
    for s in range(0, len(blocks), 25):
        near = blocks[max(0, s - 100):s + 125]
        background[s * block:(s + 25) * block] = numpy.quantile(near, 0.25)
    background[len(blocks) * block:] = background[len(blocks) * block - 1]
    found = []
    last = -1.0
    for j in numpy.nonzero(energy > 16 * background)[0]:
        if j * w / rate - last < 0.03:
            continue
        before = energy[max(0, j - 12):max(1, j - 2)].max()
        if energy[j] <= 4 * before:
            continue
        loud = j + energy[j:j + 13].argmax()
        first = max(0, j * w - rate // 100)
        part = y[first:(loud + 1) * w] ** 2
        sums = numpy.concatenate(([0], numpy.cumsum(part)))
        k = numpy.arange(3, len(part) - 3)
        tiny = background[j] * 1e-2
        criterion = k * numpy.log(sums[k] / k + tiny) + (len(part) - k - 1) * numpy.log((sums[-1] - sums[k]) / (len(part) - k) + tiny)
        last = (first + k[criterion.argmin()]) / rate
        found.append(last)
    return found


for _ in range(int(sys.argv[2])):
    begun = time.perf_counter()
    times = impacts(sys.argv[1])
    print("took", time.perf_counter() - begun)
for t in times:
    print("impact", t)
