#!/usr/bin/env python3
"""Judges shares (Wilson) and likelihood ratios (logarithm) with their 95 % intervals by scipy, a reference library.

Usage: scipy_check.py PROGRAM   (PROGRAM writes what intervals.cpp says)
"""
import json
import subprocess
import sys

import scipy
from scipy.stats import binomtest
from scipy.stats.contingency import relative_risk

data = json.loads(subprocess.run([sys.argv[1]], check=True, capture_output=True).stdout)
faults = []


def compare(what, ours, theirs):
    if any(abs(a - b) > 1e-9 * max(1, abs(b)) for a, b in zip(ours, theirs)):
        faults.append(f"{what}: {ours}, scipy {theirs}")


for count, of, low, high in data["shares"]:
    interval = binomtest(count, of).proportion_ci(0.95, method="wilson")
    compare(f"{count} of {of}", (low, high), (interval.low, interval.high))
for a, of, b, of_b, value, low, high in data["ratios"]:
    theirs = relative_risk(a, of, b, of_b)
    interval = theirs.confidence_interval(0.95)
    compare(f"{a}/{of} over {b}/{of_b}", (value, low, high), (theirs.relative_risk, interval.low, interval.high))

print(f"{len(data['shares'])} shares, {len(data['ratios'])} ratios, scipy {scipy.__version__}")
for fault in faults:
    print(fault, file=sys.stderr)
sys.exit(1 if faults or not data["shares"] or not data["ratios"] else 0)
