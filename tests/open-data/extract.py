#!/usr/bin/env python3
"""Remakes soil_extract.csv and soil_extract_truth.json from the whole table: python3 extract.py WHOLE.csv

The rows are copied as bytes; the truth is computed by pandas with columns picked by hand, so that it shares nothing with
the program that is tested against it. Needs pandas (3.1.1 when this was last run).
"""

import json
import sys
from decimal import Decimal
from pathlib import Path

import pandas as pd

HERE = Path(__file__).parent
# The first fourteen rows, both rows without Cr and all five with Pb.
ROWS = [*range(14), 59, 506, 511, 553, 556, 557]
ELEMENTS = ["Cl", "Cr", "Cd", "Pb"]


def main(whole: str) -> None:
    lines = Path(whole).read_bytes().splitlines(keepends=True)
    (HERE / "soil_extract.csv").write_bytes(lines[0] + b"".join(lines[1 + row] for row in ROWS))
    table = pd.read_csv(HERE / "soil_extract.csv", dtype=str, keep_default_na=False)
    assert set(table["Units"]) == {"%"}
    truth = {"rows": len(table), "elements": {}}
    for element in ELEMENTS:
        written = table[element].str.strip()
        below = written == "< LOD"
        # One percent is 10 000 mg/kg; decimals, so that a sum is exact.
        numbers = [Decimal(text) * 10000 for text in written[~below]]
        limits = [Decimal(text) * 10000 for text in table[f"{element} Error"][below]]
        truth["elements"][element] = {
            "numbers": len(numbers),
            "sum_mg_per_kg": int(sum(numbers)),
            "below_detection": len(limits),
            "sum_of_limits_mg_per_kg": int(sum(limits)),
        }
    (HERE / "soil_extract_truth.json").write_text(json.dumps(truth, indent=2) + "\n")


if __name__ == "__main__":
    main(sys.argv[1])
