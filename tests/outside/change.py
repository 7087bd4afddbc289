#!/usr/bin/env python3
"""Remakes the factors by which a lot may lie beside the part's accepted lots, and check values for them.

    python change.py           writes crates/core/data/change_factors.tsv and tests/vectors/change.json
    python change.py --check   compares, writes nothing; exit 1 where anything differs

Needs requirements.txt (`scripts/check-values` makes the environment). The tests of the project read what this wrote.

The question: n values and one more, all of one normal distribution. The centre is the median of the n; the spread is the
standard deviation of those that are left when the fifth furthest from the centre (rounded down) is left out, made right for
so few by a constant. How many spreads from the centre does the further one lie in p of all cases? For given n values the
chance is a sum of two tails of the normal distribution, so only the n values are simulated (seeded) and the tails are
averaged: far smoother than counting.
"""

import json
import math
import sys
from pathlib import Path

import numpy
import scipy
from scipy.optimize import brentq
from scipy.special import ndtr

PROJECT = Path(__file__).resolve().parents[2]
RATE = 0.01
LOTS = [*range(5, 31), 40, 60, 100]
ELEMENTS = [1, 2, 3, 4, 5, 6, 8, 10, 12, 15, 20, 30, 50, 120]
WHOLE, LEAST_REST, REPLACED = 1e6, 1e4, 0.65


def centre_and_raw_spread(values):
    """Of each row: median, and the standard deviation without the furthest fifth."""
    centre = numpy.median(values, axis=1)
    distance = numpy.abs(values - centre[:, None])
    kept = values.shape[1] - values.shape[1] // 5
    nearest = numpy.argpartition(distance, kept - 1, axis=1)[:, :kept]
    return centre, numpy.take_along_axis(values, nearest, axis=1).std(axis=1, ddof=1)


def row(n):
    chance = numpy.random.default_rng(20261100 + n)
    draws = 2_000_000 if n <= 10 else 400_000 if n <= 30 else 120_000
    parts = [centre_and_raw_spread(chance.standard_normal((50_000, n))) for _ in range(draws // 50_000 or 1)]
    centre = numpy.concatenate([part[0] for part in parts])
    raw = numpy.concatenate([part[1] for part in parts])
    right = round(1 / raw.mean(), 4)
    spread = raw * right

    def beyond(factor):
        return numpy.mean(ndtr(-(centre + factor * spread)) + ndtr(centre - factor * spread))

    factors, low = [], 1.0
    for elements in ELEMENTS:
        p = RATE / elements
        high = low
        while beyond(high) > p:
            high *= 1.3
        low = brentq(lambda factor: beyond(factor) - p, low, high, xtol=1e-4)
        # Rounded up: a factor may be too strict, never too lax.
        factors.append(math.ceil(low * 100) / 100)
    return right, factors


def table():
    lines = [
        "# Spreads beyond which a lot is not one of n accepted lots, so that no more than 1 % of unchanged lots are called",
        "# changed for any of so many elements together. Made by tests/outside/change.py; do not edit by hand.",
        "\t".join(["lots", "right", *map(str, ELEMENTS)]),
    ]
    for n in LOTS:
        right, factors = row(n)
        lines.append("\t".join([str(n), f"{right:.4f}", *(f"{factor:.2f}" for factor in factors)]))
    return "\n".join(lines) + "\n"


def log_ratio(mg_per_kg):
    """An element against everything else in the kilogram."""
    return numpy.log(mg_per_kg / numpy.maximum(WHOLE - mg_per_kg, LEAST_REST))


def cases():
    chance = numpy.random.default_rng(7)
    found = []
    for n in (5, 6, 9, 10, 11, 17, 30, 35):
        for level, spread, limit in ((250.0, 0.1, None), (40.0, 0.5, 30.0), (620_000.0, 0.01, None), (998_000.0, 0.002, None)):
            values = numpy.minimum(numpy.round(level * numpy.exp(spread * chance.standard_normal(n)), 3), 1_004_000.0)
            below = values < limit if limit else numpy.zeros(n, bool)
            if below.sum() * 2 >= n:
                continue
            used = numpy.where(below, REPLACED * (limit or 0.0), values)
            ratios = log_ratio(used)
            centre, raw = centre_and_raw_spread(ratios[None, :])
            found.append(
                {
                    "mg_per_kg": [f"{value:.3f}" for value in values],
                    "limit": None if limit is None else f"{limit:.0f}",
                    "log_ratios": ratios.tolist(),
                    "centre": float(centre[0]),
                    "raw_spread": float(raw[0]),
                }
            )
    body = {"made_with": {"numpy": numpy.__version__, "scipy": scipy.__version__}, "cases": found}
    return json.dumps(body, indent=1, allow_nan=False) + "\n"


def main():
    wrong = 0
    for path, text in (
        (PROJECT / "tests/vectors/change.json", cases()),
        (PROJECT / "crates/core/data/change_factors.tsv", table()),
    ):
        if "--check" not in sys.argv:
            path.write_text(text)
        elif path.read_text() != text:
            print(f"{path.name} differs")
            wrong = 1
    return wrong


sys.exit(main())
