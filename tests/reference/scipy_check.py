#!/usr/bin/env python3
"""Judges shares (Wilson) and likelihood ratios (Koopman's score) with their 95 % intervals by scipy, a reference library.

Usage: scipy_check.py PROGRAM   (PROGRAM writes what intervals.cpp says)
"""
import json
import subprocess
import sys

import scipy
from scipy.optimize import brentq
from scipy.stats import binomtest, chi2

data = json.loads(subprocess.run([sys.argv[1]], check=True, capture_output=True).stdout)
faults = []


def compare(what, ours, theirs, most=1e-9):
    if any(abs(a - b) > most * max(1, abs(b)) for a, b in zip(ours, theirs)):
        faults.append(f"{what}: {ours}, scipy {theirs}")


def score(a, n, b, m, ratio):
    """The score statistic of the hypothesis that a/n is `ratio` times b/m, its likeliest shares found by a root of the likelihood."""
    top = min(1, 1 / ratio)
    below = brentq(
        lambda p: (a + b) / p - (n - a) * ratio / (1 - ratio * p) - (m - b) / (1 - p), 1e-12, top * (1 - 1e-12), xtol=1e-15, rtol=1e-14
    )
    above = ratio * below
    variance = above * (1 - above) / n + ratio**2 * below * (1 - below) / m
    return (a / n - ratio * b / m) ** 2 / variance


def bounds(a, n, b, m):
    value = (a / n) / (b / m)
    beyond = lambda ratio: score(a, n, b, m, ratio) - chi2.ppf(0.95, 1)
    return value, brentq(beyond, value / 1e6, value * 0.9999, rtol=1e-12), brentq(beyond, value * 1.0001, value * 1e6, rtol=1e-12)


for count, of, low, high in data["shares"]:
    interval = binomtest(count, of).proportion_ci(0.95, method="wilson")
    compare(f"{count} of {of}", (low, high), (interval.low, interval.high))
for a, of, b, of_b, value, low, high in data["ratios"]:
    compare(f"{a}/{of} over {b}/{of_b}", (value, low, high), bounds(a, of, b, of_b), 1e-7)

print(f"{len(data['shares'])} shares, {len(data['ratios'])} ratios, scipy {scipy.__version__}")
for fault in faults:
    print(fault, file=sys.stderr)
sys.exit(1 if faults or not data["shares"] or not data["ratios"] else 0)
