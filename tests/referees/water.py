"""Heating, density and growth of water: lockerleaf's sums against IAPWS-IF97."""

import sys

from iapws import IAPWS97

from sums import Sums, worst

WATER = {}


def water(celsius):
    """Density in kg/l and enthalpy in kJ/kg, at the pressure of the air."""
    if celsius not in WATER:
        state = IAPWS97(T=celsius + 273.15, P=0.101325)
        WATER[celsius] = (state.rho / 1000, state.h)
    return WATER[celsius]


def main():
    sums = Sums(sys.argv[1])
    heatings, minutes = [], []
    for volume in (5, 10, 14, 30):
        for start in (5, 10, 15, 20):
            for end in (40, 50, 60, 70):
                for power in (0.5, 0.85, 1.3, 2, 4):
                    (density, cold), (_, hot) = water(start), water(end)
                    heatings.append([volume, start, end, power])
                    minutes.append(volume * density * (hot - cold) / power / 60)
    worst("heat-up time, 5 to 20 °C up to 70 °C", sums.all("heat-up-time", heatings), minutes, 0.005)
    warm = list(range(1, 100))
    worst("density of water, 1 to 99 °C", sums.all("warm-water-mass", [[1, t] for t in warm]), [water(t)[0] for t in warm], 0.0005)
    hot = list(range(20, 96, 5))
    grown = [100 * (water(15)[0] / water(t)[0] - 1) for t in hot]
    worst("growth of 100 l from 15 °C, in l", sums.all("water-growth", [[100, 15, t] for t in hot]), grown, 0.02, share=False)
    sums.end()


main()
