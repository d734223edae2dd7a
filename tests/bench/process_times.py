"""Median wall times of whole processes, for figures that a benchmark inside the program cannot give.

    process_times.py CREASEWRIGHT DESIGN [RUNS]
"""

import os
import statistics
import subprocess
import sys
import time


def median_ms(command, runs, accepted):
    times = []
    for _ in range(runs + 1):
        start = time.perf_counter()
        done = subprocess.run(command, stdout=subprocess.DEVNULL, stderr=subprocess.PIPE, check=False)
        times.append(1000 * (time.perf_counter() - start))
        if done.returncode not in accepted:
            sys.exit(f"{' '.join(command)}: exit {done.returncode}: {done.stderr.decode()}")
    return statistics.median(times[1:])  # the first run warms the disk cache


def main():
    program, design = sys.argv[1], sys.argv[2]
    runs = int(sys.argv[3]) if len(sys.argv) > 3 else 21
    os.environ["QT_QPA_PLATFORM"] = "offscreen"
    print(f"{'whole process':<34}median of {runs}, ms")
    for words in (["--version"], ["styles"], ["check", design]):
        print(f"{'creasewright ' + words[0]:<34}{median_ms([program, *words], runs, (0,)):.1f}")
    # What starting any process costs here, to read the others beside.
    print(f"{'true':<34}{median_ms(['true'], runs, (0,)):.1f}")


if __name__ == "__main__":
    main()
