"""Remakes the check values in tests/vectors from other people's libraries.

    make_vectors.py FOLDER           writes the files
    make_vectors.py --check FOLDER   remakes them in memory and compares: texts exactly, numbers within the digits printed

Nothing here shares code with the program. Cases are invented unless a source stands beside them.
"""

import argparse
import json
import re
import sys
from decimal import Decimal
from fractions import Fraction
from pathlib import Path

import mpmath as mp
import numpy as np
import pandas as pd
import scipy
import statsmodels
import statsmodels.api as sm
import statsmodels.formula.api as smf
import uncertainties
from scipy import optimize, stats
from statsmodels.stats.weightstats import DescrStatsW
from uncertainties import correlated_values, ufloat

mp.mp.dps = 50

LIBRARIES = {
    "mpmath": mp.__version__,
    "numpy": np.__version__,
    "scipy": scipy.__version__,
    "statsmodels": statsmodels.__version__,
    "uncertainties": uncertainties.__version__,
}


def digits(number):
    """Seventeen significant digits of a number with many more."""
    return mp.nstr(number, 17, min_fixed=-5, max_fixed=17)


def table(heading, rows):
    lines = [",".join(heading)]
    lines += [",".join(str(cell) for cell in row) for row in rows]
    return "\n".join(lines) + "\n"


def document(made_with, body):
    content = {"made_with": {name: LIBRARIES[name] for name in made_with}, **body}
    return json.dumps(content, indent=1, allow_nan=False) + "\n"


# --- distributions -------------------------------------------------------------------------------------------------


def normal_upper(z):
    return mp.erfc(mp.mpf(z) / mp.sqrt(mp.mpf(2))) / 2


def t_upper(t, nu):
    t, nu = mp.mpf(t), mp.mpf(nu)
    tail = mp.betainc(nu / 2, mp.mpf(1) / 2, 0, nu / (nu + t * t), regularized=True) / 2
    return tail if t >= 0 else 1 - tail


def chi_square_upper(x, nu):
    return mp.gammainc(mp.mpf(nu) / 2, mp.mpf(x) / 2, mp.inf, regularized=True)


def f_upper(f, over, under):
    f, over, under = mp.mpf(f), mp.mpf(over), mp.mpf(under)
    return mp.betainc(under / 2, over / 2, 0, under / (under + over * f), regularized=True)


def normal_tails():
    """Both tails, each by itself, to 37 sigma."""
    zs = ["0", "0.1", "0.5", "1", "1.5", "2", "2.5", "3", "4", "5", "6", "8", "10", "15", "20", "30", "37"]
    rows = [(z, digits(normal_upper(-mp.mpf(z))), digits(normal_upper(z)), repr(float(stats.norm.sf(float(z))))) for z in zs]
    return table(["z", "lower", "upper", "upper_by_scipy"], rows)


def student_t():
    rows = []
    for nu in [1, 2, 3, 4, 5, 9, 10, 29, 30, 100, 999, 10000]:
        for t in [0.001, 0.1, 0.5, 1.0, 1.5, 2.0, 3.0, 5.0, 9.25, 20.0, 100.0, -2.0]:
            tail = t_upper(t, nu)
            if tail > mp.mpf("1e-280"):
                rows.append((nu, t, digits(tail), repr(float(stats.t.sf(t, nu)))))
    return table(["nu", "t", "upper", "upper_by_scipy"], rows)


def t_for_few():
    """The t quantile with the same one-sided tail as k sigmas, for a standard deviation from n values."""
    rows = []
    for k in ["0.5", "1", "2", "2.5", "3", "5"]:
        tail = normal_upper(k)
        for n in [2, 3, 4, 5, 6, 7, 8, 9, 10, 15, 20, 30]:
            start = float(stats.t.isf(float(tail), n - 1))
            t = mp.findroot(lambda t: mp.log(t_upper(t, n - 1)) - mp.log(tail), mp.mpf(start))
            rows.append((k, n, digits(t), repr(start)))
    return table(["k", "n", "t", "t_by_scipy"], rows)


def chi_square():
    rows = []
    for nu in [1, 2, 3, 4, 5, 9, 10, 49, 50, 199, 1000, 9999]:
        for ratio in [0.01, 0.1, 0.5, 0.9, 1.0, 1.1, 1.5, 2.0, 5.0, 20.0, 60.0]:
            x = float(np.float64(nu * ratio))
            tail = chi_square_upper(x, nu)
            if tail > mp.mpf("1e-280"):
                rows.append((nu, repr(x), digits(tail), repr(float(stats.chi2.sf(x, nu)))))
    return table(["nu", "x", "upper", "upper_by_scipy"], rows)


def f_tails():
    rows = []
    for over in [1, 2, 3, 4, 8, 15, 100, 501]:
        for under in [1, 2, 3, 6, 20, 46, 180, 1000]:
            for f in [0.01, 0.3, 1.0, 1.18, 2.5, 10.0, 21.0, 300.0]:
                tail = f_upper(f, over, under)
                if tail > mp.mpf("1e-280"):
                    rows.append((over, under, f, digits(tail), repr(float(stats.f.sf(f, over, under)))))
    return table(["over", "under", "f", "upper", "upper_by_scipy"], rows)


# --- outliers and spots --------------------------------------------------------------------------------------------


def grubbs_critical(n):
    t = stats.t.isf(0.05 / (2 * n), n - 2)
    return (n - 1) / np.sqrt(n) * np.sqrt(t * t / (n - 2 + t * t))


def grubbs_table():
    return table(["n", "critical"], [(n, repr(float(grubbs_critical(n)))) for n in [*range(5, 41), 60, 100, 500]])


OUTLIERS = {
    "eight values of a mass spectrometer on a uranium isotope (a textbook example, from memory)": [
        199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57,
    ],
    "invented, no outlier": [98, 101, 99.5, 100.4, 97.8, 102.2],
    "invented, a hot spot": [98, 101, 99.5, 100.4, 97.8, 122.2],
    "invented, a low one": [0.61, 0.6, 0.63, 0.2, 0.62, 0.6, 0.64],
}

SPOTS = {
    "invented, three alike": [[96, 101, 99], [102, 98, 100], [97, 100, 103]],
    "invented, one spot high": [[96, 101, 99], [102, 98, 100], [131, 126, 129]],
    "invented, unequal": [[10.1, 10.4], [10.0, 10.3, 10.2], [11.5, 11.1], [10.2]],
    "invented, many": [[50 + ((7 * i + 3 * j) % 11) * 0.1 for j in range(6)] for i in range(12)],
}


def outliers_and_spots():
    outliers = []
    for name, values in OUTLIERS.items():
        x = np.array(values, dtype=float)
        distance = np.abs(x - x.mean())
        outliers.append({
            "name": name,
            "values": values,
            "index": int(distance.argmax()),
            "g": float(distance.max() / x.std(ddof=1)),
            "critical": float(grubbs_critical(len(x))),
        })
    spots = []
    for name, groups in SPOTS.items():
        frame = pd.DataFrame([(i, float(x)) for i, group in enumerate(groups) for x in group], columns=["spot", "x"])
        fit = sm.stats.anova_lm(smf.ols("x ~ C(spot)", frame).fit())
        between, within = fit.iloc[0], fit.iloc[1]
        sizes = np.array([len(group) for group in groups], dtype=float)
        n0 = (sizes.sum() - (sizes**2).sum() / sizes.sum()) / (len(groups) - 1)
        f, p = stats.f_oneway(*groups)
        assert abs(f / between["F"] - 1) < 1e-9, "scipy and statsmodels agree"
        spots.append({
            "name": name,
            "groups": groups,
            "df_between": int(between["df"]),
            "df_within": int(within["df"]),
            "f": float(between["F"]),
            "p": float(p),
            "ms_between": float(between["mean_sq"]),
            "ms_within": float(within["mean_sq"]),
            "n0": float(n0),
            # ISO Guide 35, homogeneity, as the R package eCerto restates it.
            "s_bb": float(np.sqrt(max(0.0, (between["mean_sq"] - within["mean_sq"]) / n0))),
            "u_bb_min": float(np.sqrt(within["mean_sq"] / n0) * (2 / within["df"]) ** 0.25),
        })
    return document(["numpy", "scipy", "statsmodels"], {"outliers": outliers, "spots": spots})


# --- repeats -------------------------------------------------------------------------------------------------------

REPEATS = {
    "three that agree": (["92", "95", "90"], ["4", "4", "4"]),
    "three that disagree": (["60", "95", "130"], ["4", "4", "5"]),
    "four of unequal time": (["101.2", "98.4", "103.9", "99.1"], ["6", "3", "6", "3"]),
    "one": (["88"], ["5"]),
    "two": (["940", "990"], ["20", "20"]),
    "two, scatter larger by chance": (["100", "110"], ["5", "5"]),
    "five near a limit": (["962", "1011", "985", "1004", "978"], ["18", "19", "18", "19", "18"]),
    "five that scatter more than they state": (
        ["27669.38", "27802.41", "28563.15", "27720.39", "27853.61"],
        ["75.195", "75.72", "76.47", "75.915", "75.875"],
    ),
    "three without uncertainty": (["12.1", "11.4", "12.9"], None),
    "nine without uncertainty": (["1", "2", "3", "1", "2", "3", "1", "2", "3"], None),
    "ten without uncertainty": (["1", "2", "3", "1", "2", "3", "1", "2", "3", "2"], None),
    "twelve that scatter more than they state": (
        ["50", "58", "41", "66", "39", "52", "61", "47", "70", "35", "55", "44"],
        ["2"] * 12,
    ),
    "negative values": (["-3.2", "1.1", "-0.4"], ["2", "2", "2"]),
}


def one_case_of_repeats(name, values, sigmas, constant, k):
    x = np.array([float(value) for value in values])
    n = len(x)
    case = {"name": name, "values": values, "sigmas": sigmas, "constant": constant, "k": k, "n": n}
    case["mean"] = float(DescrStatsW(x).mean)
    s = float(x.std(ddof=1)) if n > 1 else None
    case["s"] = s
    external = s / np.sqrt(n) if n > 1 else 0.0
    internal, agree = 0.0, None
    case["internal"] = case["chi_square"] = case["p"] = None
    if sigmas is not None:
        u = np.array([float(sigma) for sigma in sigmas])
        internal = case["internal"] = float(np.sqrt((u**2).sum()) / n)
        if n > 1:
            weighted = DescrStatsW(x, weights=1 / u**2)
            chi_square = float((((x - weighted.mean) / u) ** 2).sum())
            case["chi_square"] = chi_square
            case["p"] = float(stats.chi2.sf(chi_square, n - 1))
            agree = bool(case["p"] >= 0.05)
    case["agree"] = agree
    # t replaces k below ten readings where the scatter stands alone or contradicts what is stated.
    case["t"] = None
    if 1 < n < 10 and agree is not True:
        case["t"] = float(stats.t.isf(stats.norm.sf(float(k)), n - 1))
        external *= case["t"] / float(k)
    case["sigma"] = float(np.hypot(max(internal, external), float(constant)))
    return case


def repeats():
    cases = []
    for name, (values, sigmas) in REPEATS.items():
        for constant, k in [("0", "3"), ("1.5", "2")]:
            cases.append(one_case_of_repeats(name, values, sigmas, constant, k))
    return document(["numpy", "scipy", "statsmodels"], {"cases": cases})


# --- conformity ----------------------------------------------------------------------------------------------------


def tails_of(x, sigma, limit):
    z = (mp.mpf(limit) - mp.mpf(x)) / mp.mpf(sigma)
    return {"x": x, "sigma": sigma, "limit": limit, "within": digits(normal_upper(-z)), "beyond": digits(normal_upper(z))}


def conformity():
    cases = [
        tails_of(x, sigma, limit)
        for sigma, limit in [("5", "100"), ("12.5", "1000"), ("0.33333", "10")]
        for x in sorted({
            str(Decimal(limit) - Decimal(sigma) * Decimal(z))
            for z in ["-30", "-10", "-6", "-3", "-2", "-1", "-0.1", "0", "0.1", "0.5", "1", "1.5", "2", "3", "5", "8", "10", "20", "28"]
        }, key=Decimal)
    ]
    return document(["mpmath"], {
        # Inputs as published; the probabilities are computed here.
        "two_limits": {
            "source": "JCGM 106:2012, 7.4",
            "y": "13.6", "u": "1.8", "lower": "12.5", "upper": "16.3",
            "below": digits(normal_upper((mp.mpf("13.6") - mp.mpf("12.5")) / mp.mpf("1.8"))),
            "above": digits(normal_upper((mp.mpf("16.3") - mp.mpf("13.6")) / mp.mpf("1.8"))),
        },
        "resistors": {
            "source": "JCGM 106:2012, the example of resistors of 1500 ohm (inputs as restated by others)",
            "mean": "1500", "sd": "0.12", "lower": "1499.8", "upper": "1500.2",
            "conforming": digits(1 - 2 * normal_upper(mp.mpf("0.2") / mp.mpf("0.12"))),
        },
        "cases": cases,
    })


def decision_rules():
    """ILAC-G8:09/2019, 4.2.1 to 4.2.3, w = U = 2 u. Ties: at the limit its own operator; at L - U the binary rule passes and
    the other one, whose conditional intervals the guide prints closed, passes conditionally."""
    rows = []
    for limit, expanded in [("100", "10"), ("1000", "60"), ("900", "45"), ("0.5", "0.1")]:
        top, wide = Decimal(limit), Decimal(expanded)
        step = Decimal("0.000001")
        values = {Decimal(0), top * Decimal("0.8"), top - wide / 2, top + wide / 2, top + 3 * wide}
        values |= {edge + side for edge in [top - wide, top, top + wide] for side in [-step, Decimal(0), step]}
        for y in sorted(values):
            for operator in ["<=", "<"]:
                within = y <= top if operator == "<=" else y < top
                binary = "pass" if y <= top - wide else "fail"
                if y < top - wide:
                    other = "pass"
                elif y > top + wide:
                    other = "fail"
                else:
                    other = "conditional_pass" if within else "conditional_fail"
                beyond = normal_upper((mp.mpf(limit) - mp.mpf(str(y))) / (mp.mpf(expanded) / 2))
                rows.append((limit, operator, expanded, f"{y:f}", "pass" if within else "fail", binary, other, digits(beyond)))
    heading = ["limit", "operator", "expanded", "y", "simple", "guarded", "non_binary", "beyond"]
    return table(heading, rows)


# --- totals --------------------------------------------------------------------------------------------------------


def totals():
    cases = []
    for cl, u_cl, br, u_br in [(400, 40, 500, 25), (880, 45, 590, 30), (700, 33.3, 820, 41.7), (1200, 60, 10, 4)]:
        for rho in [0.0, 0.5, 1.0]:
            covariance = rho * u_cl * u_br
            a, b = correlated_values([cl, br], [[u_cl**2, covariance], [covariance, u_br**2]])
            total = a + b
            plain = ufloat(cl, u_cl) + ufloat(br, u_br)
            if rho == 0.0:
                assert abs(total.s / plain.s - 1) < 1e-12
            cases.append({
                "cl": str(cl), "u_cl": str(u_cl), "br": str(br), "u_br": str(u_br), "rho": rho,
                "total": float(total.n), "u_total": float(total.s),
            })
    return document(["uncertainties", "numpy"], {"cases": cases})


# --- times ---------------------------------------------------------------------------------------------------------


def seconds(distance, counting, constant, took, k, z):
    """Smallest time with k u(t) + z r sqrt(t0 / t) <= distance, by root finding; None where no time will do."""

    def short_by(t):
        random = counting * np.sqrt(took / t)
        return k * np.hypot(random, constant) + z * random - distance

    if distance <= 0 or k * constant >= distance:
        return None
    far = took
    while short_by(far) > 0:
        far *= 2
    return float(optimize.brentq(short_by, took * 1e-9, far, xtol=1e-9, rtol=1e-14))


def times():
    z = float(stats.norm.isf(0.1))
    single = [
        ("95", "100", "4", "0", 30, 2), ("95", "100", "4", "1", 30, 2), ("95", "100", "4", "2.5", 30, 2),
        ("95", "100", "4", "3", 30, 2), ("99.5", "100", "4", "0", 30, 2), ("100", "100", "4", "0", 30, 2),
        ("1040", "1000", "25", "10", 60, 2), ("960", "1000", "25", "10", 60, 3), ("850", "900", "30", "5", 45.5, 3),
        ("905", "900", "30", "1.5", 45.5, 3), ("1300", "1500", "90", "0", 20, 3), ("1300", "1500", "90", "66", 20, 3),
    ]
    band = [
        ("640", "700", "1300", "40", "0", 30, 3), ("640", "700", "1300", "40", "19", 30, 3),
        ("640", "700", "1300", "40", "20", 30, 3), ("1380", "700", "1300", "55", "4", 30, 3),
        ("50", "70", "130", "9", "2", 60, 3), ("150", "70", "130", "9", "2", 60, 3),
        ("70", "70", "130", "9", "0", 60, 3), ("100", "70", "130", "9", "0", 60, 3),
        ("250", "300", None, "22", "0", 30, 3), ("320", "300", None, "22", "0", 30, 3),
        ("-5", "70", "130", "30", "0", 60, 3),
    ]
    cases = []
    for y, limit, counting, constant, took, k in single:
        distance = float(abs(Fraction(y) - Fraction(limit)))
        arguments = distance, float(counting), float(constant), took, k
        cases.append({
            "y": y, "limit": limit, "counting": counting, "constant": constant, "took_s": took, "k": k,
            "even_s": seconds(*arguments, 0.0), "nine_in_ten_s": seconds(*arguments, z),
        })
    bands = []
    for y, low, high, counting, constant, took, k in band:
        # For "below", k u has to stay under the low edge as well: a negative value is no further off than zero.
        under = Fraction(low) - max(Fraction(y), 0)
        over = Fraction(y) - Fraction(high) if high is not None else Fraction(0)
        arguments = float(max(under, over)), float(counting), float(constant), took, k
        bands.append({
            "y": y, "low": low, "high": high, "counting": counting, "constant": constant, "took_s": took, "k": k,
            "even_s": seconds(*arguments, 0.0), "nine_in_ten_s": seconds(*arguments, z),
        })
    return document(["numpy", "scipy"], {"limits": cases, "bands": bands})


# --- certified data sets -------------------------------------------------------------------------------------------


def check_certified(folder):
    """The certified numbers of the NIST data sets follow from the data as kept here, in exact fractions."""
    for path in sorted((folder / "nist_strd").glob("*.json")):
        data = json.loads(path.read_text())
        certified = data["certified"]
        if "groups" in data:
            groups = [[Fraction(str(x)) for x in group] for group in data["groups"].values()]
            count = sum(map(len, groups))
            grand = sum(map(sum, groups)) / count
            between = sum(len(g) * (sum(g) / len(g) - grand) ** 2 for g in groups) / (len(groups) - 1)
            within = sum((x - sum(g) / len(g)) ** 2 for g in groups for x in g) / (count - len(groups))
            found = {"F": between / within}
        elif "x" in data:
            x, y = ([Fraction(str(one)) for one in data[axis]] for axis in ("x", "y"))
            middle_x, middle_y = sum(x) / len(x), sum(y) / len(y)
            spread = sum((one - middle_x) ** 2 for one in x)
            slope = sum((a - middle_x) * (b - middle_y) for a, b in zip(x, y, strict=True)) / spread
            off = sum((b - middle_y - slope * (a - middle_x)) ** 2 for a, b in zip(x, y, strict=True))
            variance = off / (len(x) - 2) / spread
            found = {"B1": slope, "sd_B1": mp.sqrt(mp.mpf(variance.numerator) / variance.denominator)}
        else:
            values = [Fraction(str(x)) for x in nist_values(data)]
            mean = sum(values) / len(values)
            variance = sum((x - mean) ** 2 for x in values) / (len(values) - 1)
            found = {"mean": mean, "sd": mp.sqrt(mp.mpf(variance.numerator) / variance.denominator)}
        for name, value in found.items():
            value = mp.mpf(value.numerator) / value.denominator if isinstance(value, Fraction) else value
            if abs(value / mp.mpf(str(certified[name])) - 1) > mp.mpf("1e-12"):
                raise SystemExit(f"{path.name}: {name} is {digits(value)}, certified {certified[name]}")


def nist_values(data):
    if "data" in data:
        return data["data"]
    base = Decimal(str(data["base"]))
    return [base + Decimal("0.2")] + [base + Decimal("0.1"), base + Decimal("0.3")] * 500


FILES = {
    "normal_tails.csv": normal_tails,
    "student_t.csv": student_t,
    "t_for_few.csv": t_for_few,
    "chi_square.csv": chi_square,
    "f_tails.csv": f_tails,
    "grubbs.csv": grubbs_table,
    "outliers_and_spots.json": outliers_and_spots,
    "repeats.json": repeats,
    "conformity.json": conformity,
    "decision_rules.csv": decision_rules,
    "totals.json": totals,
    "times.json": times,
}

NUMBER = re.compile(r"-?\d+(?:\.\d+)?(?:e[-+]?\d+)?")


def same(made, kept):
    """The same text, with numbers within a part in 1e12 (the last digits depend on the processor's library)."""
    if NUMBER.sub("#", made) != NUMBER.sub("#", kept):
        return False
    pairs = zip(NUMBER.findall(made), NUMBER.findall(kept), strict=True)
    return all(abs(float(a) - float(b)) <= 1e-12 * abs(float(b)) for a, b in pairs)


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--check", action="store_true")
    parser.add_argument("folder", type=Path)
    options = parser.parse_args()
    check_certified(options.folder)
    different = []
    for name, make in FILES.items():
        path, made = options.folder / name, make()
        if not options.check:
            path.write_text(made)
        elif not path.exists() or not same(made, path.read_text()):
            different.append(name)
    if different:
        sys.exit(f"Not as remade: {', '.join(different)}")
    print(f"{len(FILES)} files {'are as remade' if options.check else 'written'}; the certified sets hold.")


if __name__ == "__main__":
    main()
