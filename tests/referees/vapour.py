"""Vapour pressure, boiling and density of liquid gas: lockerleaf's sums against CoolProp's reference equations."""

import sys

from CoolProp.CoolProp import PropsSI

from sums import Sums, worst

GASES = [("propane", "Propane"), ("butane", "n-Butane"), ("isobutane", "IsoButane")]


def shares(number):
    return [100.0 if number == gas else 0.0 for gas in range(3)]


def pressure(fluid, celsius):
    return PropsSI("P", "T", celsius + 273.15, "Q", 0, fluid) / 1e5


def density(fluid, celsius):
    return PropsSI("D", "T", celsius + 273.15, "Q", 0, fluid) / 1000


def main():
    sums = Sums(sys.argv[1])
    temperatures = [-40 + step / 4 for step in range(361)]
    for number, (name, fluid) in enumerate(GASES):
        ours = sums.all("vapour-pressure", [[t, *shares(number)] for t in temperatures])
        worst(f"vapour pressure of {name}, -40 to 50 °C", ours, [pressure(fluid, t) for t in temperatures], 0.005)
        ours = sums.all("gas-mass", [[1, 100, number, t] for t in temperatures])
        worst(f"density of liquid {name}, -40 to 50 °C", ours, [density(fluid, t) for t in temperatures], 0.005)
        inlets = [30, 100, 300, 500, 1000]
        boiling = [PropsSI("T", "P", 101325 + inlet * 100, "Q", 0, fluid) - 273.15 for inlet in inlets]
        ours = sums.all("coldest-air", [[inlet, *shares(number)] for inlet in inlets])
        worst(f"lowest temperature of {name}, 30 to 1000 mbar", ours, boiling, 0.3, share=False)
    mixed, law = [], []
    for propane in range(0, 101, 10):
        for butane in range(0, 101 - propane, 10):
            for celsius in (-40, -20, -10, 0, 10, 20, 50):
                parts = [propane, butane, 100 - propane - butane]
                mixed.append([celsius, *parts])
                law.append(sum(p * pressure(f, celsius) / 100 for p, (_, f) in zip(parts, GASES)))
    worst("vapour pressure of mixtures by Raoult's law", sums.all("vapour-pressure", mixed), law, 0.005)
    sums.end()


main()
