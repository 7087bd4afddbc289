#!/usr/bin/env python3
"""Remakes the physics tables of the core and the check values beside them.

    python physics.py           writes them
    python physics.py --check   compares, writes nothing; exit 1 where anything differs

Needs physics-requirements.txt. The tests of the project read what this wrote and never run it.

Written: crates/core/data/{overlaps,attenuation,matrices}.tsv and tests/vectors/physics_*.csv. The tables are made with
closed formulas; the check values beside them go another way where there is one (integrals instead of the closed
overlap, compounds by the library's own parser instead of our mixing).
"""

import math
import sys
from pathlib import Path

import numpy
import periodictable
import scipy
import xraydb
from scipy.integrate import quad

PROJECT = Path(__file__).resolve().parents[2]
LIBRARY = f"xraydb {xraydb.__version__}"
TABLES = f"Elam, Ravel and Sieber tables as carried by the {LIBRARY} library"

# The resolution model: FWHM^2 = N^2 + 5.546 F e E, 140 eV at Mn K-alpha. F and e for silicon: from memory.
FANO, PAIR_EV, REFERENCE_EV, REFERENCE_FWHM = 0.115, 3.66, 5898.75, 140.0
SLOPE = 5.546 * FANO * PAIR_EV
# One count in a thousand of a line lands in its sum peak: common practice, no source.
PILE_UP = 1e-3
SILICON_KA = 1740.0

# Line of the analyte and the primary energy that makes it.
LINES = {
    "Cl": ("Ka1", 4000.0),
    "Cr": ("Ka1", 8000.0),
    "Hg": ("La1", 18000.0),
    "Pb": ("La1", 18000.0),
    "Br": ("Ka1", 18000.0),
    "Cd": ("Ka1", 35000.0),
}

# analyte, its line, "usual" (the line an analyser takes first) or "other", partner, kind
PAIRS = [
    ("Cl", "Ka1", "usual", "S", "line"),
    ("Cl", "Ka1", "usual", "Mo", "line"),
    ("Cl", "Ka1", "usual", "Ag", "line"),
    ("Cl", "Ka1", "usual", "Rh", "tube"),
    ("Cr", "Ka1", "usual", "V", "line"),
    ("Cr", "Ka1", "usual", "Ba", "line"),
    ("Cr", "Ka1", "usual", "La", "line"),
    ("Cr", "Ka1", "usual", "Ce", "line"),
    ("Cr", "Ka1", "usual", "Pr", "line"),
    ("Cr", "Ka1", "usual", "Nd", "line"),
    ("Br", "Ka1", "usual", "As", "line"),
    ("Br", "Ka1", "usual", "Au", "line"),
    ("Br", "Ka1", "usual", "Hg", "line"),
    ("Br", "Ka1", "usual", "Pb", "line"),
    ("Br", "Ka1", "usual", "Bi", "line"),
    ("Cd", "Ka1", "usual", "Sn", "escape"),
    ("Cd", "Ka1", "usual", "Pb", "sum"),
    ("Cd", "Kb1", "other", "Sb", "line"),
    ("Hg", "La1", "usual", "Zn", "line"),
    ("Hg", "La1", "usual", "Ga", "line"),
    ("Hg", "La1", "usual", "Ge", "line"),
    ("Hg", "La1", "usual", "Br", "escape"),
    ("Hg", "La1", "usual", "Ta", "line"),
    ("Hg", "La1", "usual", "W", "line"),
    ("Hg", "La1", "usual", "Au", "line"),
    ("Pb", "La1", "usual", "Ga", "line"),
    ("Pb", "La1", "usual", "As", "line"),
    ("Pb", "La1", "usual", "Au", "line"),
    ("Pb", "La1", "usual", "Tl", "line"),
    ("Pb", "La1", "usual", "Bi", "line"),
    ("Pb", "Lb1", "other", "Fe", "sum"),
    ("Pb", "Lb1", "other", "Se", "line"),
]
# The two lines whose pulses add up.
SUMS = {("Cd", "Pb"): ("La1", "Lb1"), ("Pb", "Fe"): ("Ka1", "Ka1")}
# What the tube's own scattered line is taken to look like: as much as the halogen limit, our own choice.
TUBE_MG_KG = 900

ELEMENTS = (
    "H C N O F Na Mg Al Si P S Cl K Ca Ti Cr Mn Fe Ni Cu Zn Br Ag Cd Sn Sb Ba Au Pb Bi"
).split()
PRIMARIES = [4000.0, 8000.0, 18000.0, 35000.0]

# code, composition (a formula or mass fractions), density in g/cm3, how the row is known
MATRICES = [
    ("polyethylene", "C2H4", 0.94, "composition derived from the formula, density from memory"),
    ("abs", "C15H17N", 1.05, "composition and density common practice, no source (one unit of each monomer)"),
    ("pvc", "C2H3Cl", 1.40, "composition derived from the formula, density from memory; without plasticiser or filler"),
    ("glass", "SiO2", 2.20, "composition derived from the formula, density from memory; without lead or barium"),
    ("magnesium", {"Mg": 1.0}, 1.74, "element, density from memory"),
    ("aluminium", {"Al": 1.0}, 2.70, "element, density from memory"),
    ("titanium", {"Ti": 1.0}, 4.51, "element, density from memory"),
    ("chromium", {"Cr": 1.0}, 7.19, "element, density from memory"),
    ("iron", {"Fe": 1.0}, 7.87, "element, density from memory"),
    ("nickel", {"Ni": 1.0}, 8.90, "element, density from memory"),
    ("copper", {"Cu": 1.0}, 8.96, "element, density from memory"),
    ("brass", {"Cu": 0.6, "Zn": 0.4}, 8.40, "composition and density common practice, no source"),
    ("zinc", {"Zn": 1.0}, 7.13, "element, density from memory"),
    ("silver", {"Ag": 1.0}, 10.5, "element, density from memory"),
    ("tin", {"Sn": 1.0}, 7.30, "element, density from memory; stands for solder too"),
    ("gold", {"Au": 1.0}, 19.3, "element, density from memory"),
    ("lead", {"Pb": 1.0}, 11.34, "element, density from memory"),
]


def fwhm(energy):
    return math.sqrt(REFERENCE_FWHM**2 + SLOPE * (energy - REFERENCE_EV))


def emission(element, primary):
    """Photons of each line for one unit of mass, thin: name -> (energy, relative strength).

    Photoabsorption at the primary energy, shared over the shells by their jumps, moved between L shells by
    Coster-Kronig, times fluorescence yield and line weight.
    """
    edges = xraydb.xray_edges(element)
    left = float(xraydb.mu_elam(element, primary, kind="photo"))
    holes = {}
    for shell in ("K", "L1", "L2", "L3"):
        if shell in edges and 0 < edges[shell].energy < primary:
            jump = edges[shell].jump_ratio
            holes[shell] = left * (1 - 1 / jump)
            left /= jump
    for upper, lower in (("L1", "L2"), ("L1", "L3"), ("L2", "L3")):
        if upper in holes and lower in holes:
            holes[lower] += holes[upper] * (xraydb.ck_probability(element, upper, lower, total=False) or 0.0)
    return {
        # Siegbahn's pair of unresolved lines, without its comma.
        name.replace(",15", ""): (line.energy, holes[line.initial_level] * edges[line.initial_level].fyield * line.intensity)
        for name, line in xraydb.xray_lines(element).items()
        if line.initial_level in holes
    }


def overlap_closed(gap, width):
    """What a fit of one Gaussian takes of another of the same width: integral of g1 g2 over integral of g1 g1."""
    return 4.0 ** (-((gap / width) ** 2))


def overlap_integrated(gap, width):
    sigma = width / (2 * math.sqrt(2 * math.log(2)))
    bell = lambda at, middle: math.exp(-((at - middle) ** 2) / (2 * sigma**2))
    reach = 12 * sigma + abs(gap)
    bounds = dict(limit=400, points=[0.0, gap / 2, gap], epsabs=1e-12, epsrel=1e-11)
    both = quad(lambda at: bell(at, 0) * bell(at, gap), -reach, reach, **bounds)[0]
    own = quad(lambda at: bell(at, 0) ** 2, -reach, reach, **bounds)[0]
    return both / own


def escape_share(energy):
    """Share of a line's counts that silicon loses as its own K line: Reed and Ware's formula, from memory."""
    edge = xraydb.xray_edges("Si")["K"]
    ratio = float(xraydb.mu_elam("Si", energy)) / float(xraydb.mu_elam("Si", SILICON_KA))
    return 0.5 * edge.fyield * (1 - 1 / edge.jump_ratio) * (1 - math.log(1 + ratio) / ratio)


def partner_features(analyte, partner, kind, primary):
    """name -> (energy, strength) of what the partner puts into the spectrum."""
    lines = emission(partner, primary)
    if kind == "line":
        return lines
    if kind == "escape":
        return {
            f"{name}-Si": (energy - SILICON_KA, strength * escape_share(energy))
            for name, (energy, strength) in lines.items()
        }
    first, second = SUMS[(analyte, partner)]
    return {f"{first}+{second}": (lines[first][0] + lines[second][0], lines[first][1] * PILE_UP)}


def two_digits(number):
    if number <= 0:
        return 0
    step = 10 ** max(0, math.floor(math.log10(number)) - 1)
    return int(math.ceil(number / step - 1e-9)) * step


def overlaps():
    """Rows of the overlap table, and the same numbers by integration."""
    rows, checks = [], []
    for analyte, line, use, partner, kind in PAIRS:
        primary = LINES[analyte][1]
        at = xraydb.xray_lines(analyte)[line].energy
        width = fwhm(at)
        if kind == "tube":
            theirs, energy = "La1", xraydb.xray_lines(partner)["La1"].energy
            ratio, fixed, basis = None, TUBE_MG_KG, "our own choice: as much as the halogen limit"
        else:
            features = partner_features(analyte, partner, kind, primary)
            own = emission(analyte, primary)
            weigh = lambda lines, overlap: sum(s * overlap(e - at, width) for e, s in lines.values())
            ratio = weigh(features, overlap_closed) / weigh(own, overlap_closed)
            by_integration = weigh(features, overlap_integrated) / weigh(own, overlap_integrated)
            theirs, (energy, _) = max(features.items(), key=lambda f: f[1][1] * overlap_closed(f[1][0] - at, width))
            fixed = None
            basis = {
                "line": "derived",
                "escape": "derived, with a formula from memory",
                "sum": "derived, with one count in a thousand in the sum peak: common practice, no source",
            }[kind]
            checks.append((analyte, line, partner, theirs, f"{width:.3f}", f"{by_integration * 1e6:.6g}"))
        rows.append(
            (
                analyte,
                line,
                f"{at:.0f}",
                f"{width:.0f}",
                use,
                partner,
                theirs,
                f"{energy:.0f}",
                f"{energy - at:.0f}",
                kind,
                "-" if ratio is None else str(two_digits(ratio * 1e6)),
                "-" if fixed is None else str(fixed),
                basis,
            )
        )
    return rows, checks


def masses(composition):
    if isinstance(composition, dict):
        return composition
    parts = periodictable.formula(composition).mass_fraction
    return {str(element): share for element, share in parts.items()}


def table(head, columns, rows):
    lines = [f"# {line}".rstrip() for line in head]
    lines += ["\t".join(columns)]
    lines += ["\t".join(row) for row in rows]
    return "\n".join(lines) + "\n"


def comma(columns, rows):
    return "\n".join(",".join(row) for row in [columns, *rows]) + "\n"


def made():
    files = {}
    rows, checks = overlaps()
    files["crates/core/data/overlaps.tsv"] = table(
        [
            "Lines that lie on a line of a screened element. Made by tests/outside/physics.py; do not edit by hand.",
            f"Source: {TABLES} (energies, weights, yields, jumps, Coster-Kronig, photoabsorption).",
            "per_million: millionths of the partner's mass fraction that would look like the analyte if nothing were corrected:",
            "sum over the partner's lines of strength x 4^-((gap / fwhm)^2), over the same sum of the analyte's own lines; thin",
            "piece, primary 4 keV (Cl), 8 keV (Cr), 18 keV (Hg, Pb, Br), 35 keV (Cd). Derived; a guide within a factor of two,",
            "rounded up to two digits. A sum peak takes one count in a thousand of its line (common practice, no source).",
            "partner_line is the one that gives most. use: usual = the line an analyser takes first (common practice, no source).",
            "Published anchor for As and Pb: US EPA Method 6200, 4.7 (a ratio of 10:1 can't be resolved).",
        ],
        "analyte line eV fwhm use partner partner_line partner_eV gap kind per_million fixed_mg_kg basis".split(),
        rows,
    )
    files["tests/vectors/physics_overlaps.csv"] = comma(
        "analyte,line,partner,partner_line,fwhm_ev,per_million".split(","), checks
    )
    # As few energies as the shares need: each analyte's line out, and the primaries that make them.
    energies = [xraydb.xray_lines(element)[line].energy for element, (line, _) in LINES.items()] + PRIMARIES
    files["crates/core/data/attenuation.tsv"] = table(
        [
            "Mass attenuation coefficients in cm2/g. Made by tests/outside/physics.py; do not edit by hand.",
            f"Source: {TABLES}, total cross-section. Energies in the head, in eV: the lines Cl Ka, Cr Ka, Hg La, Pb La, Br Ka,",
            "Cd Ka, then the primary energies 4, 8, 18 and 35 keV.",
        ],
        ["element", *(f"{energy:.0f}" for energy in energies)],
        [
            (element, *(f"{float(xraydb.mu_elam(element, energy)):.4g}" for energy in energies))
            for element in ELEMENTS
        ],
    )
    files["crates/core/data/matrices.tsv"] = table(
        [
            "What lies around the measured element. Made by tests/outside/physics.py; do not edit by hand.",
            "Density in mg/cm3, composition in millionths of the mass.",
        ],
        "code density composition basis".split(),
        [
            (
                code,
                f"{density * 1000:.0f}",
                " ".join(f"{element}:{share * 1e6:.0f}" for element, share in masses(composition).items()),
                basis,
            )
            for code, composition, density, basis in MATRICES
        ],
    )
    depths = []
    for code, composition, density, _ in MATRICES:
        for element, (line, primary) in LINES.items():
            out = xraydb.xray_lines(element)[line].energy
            if isinstance(composition, str):
                inward, outward = (xraydb.material_mu(composition, e, density=density) for e in (primary, out))
            else:
                inward, outward = (
                    density * sum(share * float(xraydb.mu_elam(part, e)) for part, share in composition.items())
                    for e in (primary, out)
                )
            t99 = 4.605 / ((inward + outward) / math.sin(math.radians(45))) * 1e4
            shares = [1 - math.exp(-4.605 * t / t99) for t in (1, 5, 20, 1000, 5000)]
            depths.append((code, element, f"{t99:.6g}", *(f"{share:.7f}" for share in shares)))
    files["tests/vectors/physics_depths.csv"] = comma(
        "matrix,element,t99_um,share_1um,share_5um,share_20um,share_1mm,share_5mm".split(","), depths
    )
    compounds = []
    for halogen, kinds in (("Br", ("PBB", "PBDE")),):
        for kind in kinds:
            for number in range(1, 11):
                formula = f"C12H{10 - number}Br{number}" if number < 10 else "C12Br10"
                compounds.append((kind, number, formula + ("O" if kind == "PBDE" else ""), halogen))
    compounds += [
        ("TBBPA", 4, "C15H12Br4O2", "Br"),
        ("HBCDD", 6, "C12H18Br6", "Br"),
        ("DBDPE", 10, "C14H4Br10", "Br"),
        ("PVC", 1, "C2H3Cl", "Cl"),
        ("CrO3", 1, "CrO3", "Cr"),
    ]
    rows = []
    for kind, number, formula, element in compounds:
        molecule = periodictable.formula(formula)
        part = getattr(periodictable, element)
        share = molecule.atoms[part] * part.mass / molecule.mass
        rows.append((kind, str(number), formula, element, f"{molecule.mass:.4f}", f"{share:.8f}", f"{1 / share:.8f}"))
    files["tests/vectors/physics_compounds.csv"] = comma(
        "kind,atoms,formula,element,molar_mass,share,compound_per_element".split(","), rows
    )
    return files


def main():
    versions = (LIBRARY, periodictable.__version__, numpy.__version__, scipy.__version__)
    pinned = (Path(__file__).parent / "physics-requirements.txt").read_text()
    for name, version in zip(("xraydb", "periodictable", "numpy", "scipy"), (xraydb.__version__, *versions[1:])):
        if f"{name}=={version}" not in pinned:
            sys.exit(f"{name} is {version}: install physics-requirements.txt")
    different = 0
    for name, text in made().items():
        path = PROJECT / name
        if "--check" in sys.argv[1:]:
            same = path.exists() and path.read_text(encoding="utf-8") == text
            print(f"{'same' if same else 'DIFFERENT'}  {name}")
            different += not same
        else:
            path.write_text(text, encoding="utf-8")
            print(f"written  {name}")
    sys.exit(1 if different else 0)


main()
