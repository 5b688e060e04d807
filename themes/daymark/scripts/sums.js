// The sliders of the page of figures: the answers are worked out from data that the program put into the page.
// A plain script in a scope of its own. A test works out the same answers by `answers`, so it is the module's export there.
(() => {
  "use strict";

  /** Pressure of liquid gas in bar, air counted in. */
  const pressure = ([a, b, c], celsius) => 10 ** (a - b / (celsius + c));

  /** The numbers of what to switch off until the rest fits, the largest first. */
  function off(amps, supply) {
    const order = amps.map((_, number) => number).sort((a, b) => amps[b] - amps[a] || a - b);
    let left = amps.reduce((sum, one) => sum + one, 0);
    const first = [];
    for (const number of order) {
      if (left <= supply + 1e-9) {
        break;
      }
      first.push(number);
      left -= amps[number];
    }
    return first;
  }

  /** What rests on front and rear. */
  function axles(load, set) {
    const people = load.people[Math.min(set.people, load.people.length - 1)];
    return [0, 1].map(
      (end) => load.empty[end] + people[end] + load.gas[end] + (load.water[end] * set.water) / 100 + load.luggage[end] * set.luggage,
    );
  }

  /** All answers at a setting; null where the vehicle lacks what is asked. */
  function answers(own, set) {
    const both = (pair, work) => pair && pair.map(work);
    return {
      pressure: own.gas && pressure(own.gas.pressure, set.outside) - own.gas.air,
      gas: both(own.gas?.daily, (daily) => (daily * set.days) / own.gas.full) ?? null,
      water: both(own.water?.each, (each) => (each * set.people * set.days) / own.water.full) ?? null,
      battery: both(own.battery?.daily, (daily) => (daily * set.days) / own.battery.usable) ?? null,
      off: own.mains && off(own.mains.amps, set.pitch),
      axles: own.axles && axles(own.axles, set),
    };
  }

  if (typeof module === "object") {
    module.exports = answers;
    return;
  }

  const section = document.querySelector(".dials");
  if (!section) {
    return;
  }
  const own = JSON.parse(section.dataset.dials);
  const words = section.dataset;
  const dials = [...section.querySelectorAll("input")];
  const number = (value, digits) => String(Number(value.toFixed(digits))).replace(".", words.decimal).replace("-", "\u2212");
  const span = ([low, high], digits) => {
    const ends = [number(low, digits), number(high, digits)];
    return ends[0] === ends[1] ? ends[0] : `${ends[0]} ${words.to} ${ends[1]}`;
  };

  /** Each answer in words, by its name. */
  const say = {
    pressure: (bar) => `${number(bar, 1)}\u00a0bar: ${bar >= own.gas.needs ? words.good : words.low}`,
    gas: (pair) => span(pair, 1),
    water: (pair) => span(pair, 1),
    battery: (pair) => span(pair, 1),
    off: (first) => first.map((one) => own.mains.names[one]).join(", ") || words.nothing,
    axles: (loads) => {
      const { limits, maximum } = own.axles;
      const sum = loads[0] + loads[1];
      const over = limits.some((limit, end) => limit !== null && loads[end] > limit) || (maximum !== null && sum > maximum);
      return `${number(loads[0], 0)} + ${number(loads[1], 0)} = ${number(sum, 0)}\u00a0kg: ${over ? words.over : words.within}`;
    },
  };

  function show() {
    const set = { people: 1, days: 1, outside: 15, pitch: 10, luggage: 0, water: 0 };
    for (const dial of dials) {
      set[dial.name] = Number(dial.value);
      const output = section.querySelector(`output[for="${dial.id}"]`);
      const unit = output.dataset.unit;
      output.textContent = unit ? `${number(set[dial.name], 0)}\u00a0${unit}` : number(set[dial.name], 0);
    }
    for (const [name, answer] of Object.entries(answers(own, set))) {
      const place = section.querySelector(`[data-answer="${name}"]`);
      if (place && answer !== null) {
        place.textContent = say[name](answer);
      }
    }
  }

  section.hidden = false;
  section.addEventListener("input", show);
  show();
})();
