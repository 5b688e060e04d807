"""What the referees share: lockerleaf's sums in numbers, and the comparison."""

import json
import subprocess
import sys


class Sums:
    """The program that works out a sum for each line of JSON."""

    def __init__(self, program):
        self.program = program

    def all(self, calculation, inputs):
        lines = "\n".join(json.dumps({"calculation": calculation, "inputs": each}) for each in inputs)
        run = subprocess.run([self.program], input=lines + "\n", capture_output=True, text=True, check=True)
        results = [json.loads(line) for line in run.stdout.splitlines()]
        wrong = [result for result in results if not isinstance(result, (int, float))]
        if wrong or len(results) != len(inputs):
            sys.exit(f"{calculation}: {len(results)} results for {len(inputs)} inputs; {wrong[:1]}")
        return results

    def end(self):
        if FAILED:
            sys.exit(f"too far off: {', '.join(FAILED)}")


FAILED = []


def worst(what, ours, theirs, allowed, share=True):
    """Prints the worst difference, as a share of the referee's value or in its unit."""
    off = [abs(a - b) / abs(b) if share else abs(a - b) for a, b in zip(ours, theirs, strict=True)]
    most = max(off)
    shown = f"{most:.4%} (allowed {allowed:.2%})" if share else f"{most:.4f} (allowed {allowed})"
    print(f"{what}: {len(off)} points, worst {shown}")
    if not most <= allowed:
        FAILED.append(what)
