"""Writes compare.json: what SciPy says of samples, counts and ranks as src/compare meets them.

Run with Debian's python3-scipy: /usr/bin/python3 tests/golden/compare.py
"""

import json
from pathlib import Path

import numpy as np
import scipy
from scipy.stats import binom, binomtest, fisher_exact, mannwhitneyu, norm

chance = np.random.default_rng(5)


def rank_sum(first, second, method):
    first, second = sorted(first), sorted(second)
    odds = mannwhitneyu(first, second, alternative="two-sided", method=method).pvalue
    return {"first": first, "second": second, "method": method, "odds": float(odds)}


def sample(count, shift, decimals):
    return [round(float(value), decimals) for value in chance.normal(80 + shift, 6, count)]


rank_sums = [
    rank_sum(sample(5, 0, 4), sample(5, 9, 4), "exact"),
    rank_sum(sample(8, 0, 4), sample(30, 3, 4), "exact"),
    rank_sum(sample(6, 0, 4), sample(90, 0, 4), "exact"),
    rank_sum(sample(5, 30, 4), sample(40, 0, 4), "exact"),
    rank_sum(sample(14, 0, 0), sample(12, 4, 0), "asymptotic"),
    rank_sum(sample(7, 0, 0), sample(9, 2, 0), "asymptotic"),
    rank_sum(sample(60, 0, 1), sample(45, 3, 1), "asymptotic"),
]
tables = [(8, 2, 1, 5), (11, 3, 6, 9), (40, 2, 22, 17), (5, 0, 0, 5), (300, 100, 250, 120)]
shares = [(0, 5), (3, 5), (5, 5), (11, 14), (1, 40), (250, 300)]


def median_ranks(count):
    low = int(binom.ppf(0.025, count, 0.5))
    low = low if binom.cdf(low, count, 0.5) > 0.025 else low + 1
    return [low, count + 1 - low]


golden = {
    "source": "tests/golden/compare.py",
    "tool": "SciPy (Debian python3-scipy)",
    "version": scipy.__version__,
    "tolerance": 1e-9,
    "rankSums": rank_sums,
    "fisher": [
        {"table": list(table), "odds": float(fisher_exact([table[:2], table[2:]])[1])} for table in tables
    ],
    "wilson": [
        {
            "hits": hits,
            "count": count,
            "ends": [float(end) for end in binomtest(hits, count).proportion_ci(method="wilson")],
        }
        for hits, count in shares
    ],
    "medianRanks": [{"count": count, "ranks": median_ranks(count)} for count in (6, 7, 9, 14, 20, 50, 333, 6000)],
    "normalTail": [{"z": z, "share": float(norm.sf(z))} for z in (-1.5, 0, 0.3, 1.96, 2.99, 3, 4.2, 6.5)],
}
Path(__file__).with_suffix(".json").write_text(json.dumps(golden, separators=(",", ":")) + "\n")
