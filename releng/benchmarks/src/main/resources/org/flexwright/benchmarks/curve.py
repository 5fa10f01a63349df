# A table "time,travel,force" read, copied and summed up as a file that is taken in, with NumPy.
# Prints rows, sum of force and highest force, then the nanoseconds of each run.
import hashlib
import shutil
import sys
import time

import numpy

times = []
for run in range(3):
    begun = time.perf_counter_ns()
    table = numpy.loadtxt(sys.argv[1], delimiter=",", skiprows=1)
    if not numpy.all(numpy.diff(table[:, 0]) >= 0):
        sys.exit("time runs backwards")
    shutil.copyfile(sys.argv[1], sys.argv[1] + ".copy")
    with open(sys.argv[1], "rb") as raw:
        hashlib.file_digest(raw, "sha256").hexdigest()
    times.append(time.perf_counter_ns() - begun)
print(len(table), repr(float(numpy.add.accumulate(table[:, 2])[-1])), repr(float(table[:, 2].max())))
print(*times)
