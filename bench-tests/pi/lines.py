"""The relays' lines: as lamps on them would show from outside the guest, and as the guest's kernel wrote down who drove them."""
import re
import threading
import time

# Line and whether it is active low, as in tunnel.toml.
RELAYS = {"heater-1": (17, False), "heater-2": (5, True), "dryer": (22, False), "vent-fan": (6, True)}
AT_STOP = frozenset({"heater-1"})
TRACE = "/sys/kernel/tracing"


def closed(name, high):
    return high != RELAYS[name][1]


class Lamps:
    """Looks at every line some twenty times a second through QEMU's monitor."""

    def __init__(self, pi):
        self.pi = pi
        self.driven = set()  # a line that was never an output closes nothing: the board's pull holds its relay open
        self.now = frozenset()
        self.seen = [self.now]
        threading.Thread(target=self.run, daemon=True).start()

    def run(self):
        try:
            while True:
                self.look()
                time.sleep(0.05)
        except (OSError, EOFError):
            return  # QEMU is gone

    def look(self):
        gpio = self.pi.gpio()
        self.driven |= {name for name, (line, _) in RELAYS.items() if gpio.is_output(line)}
        self.now = frozenset(name for name in self.driven if closed(name, gpio.is_high(RELAYS[name][0])))
        if self.now != self.seen[-1]:
            self.seen.append(self.now)


class KernelLog:
    """What drove the lines, from the kernel's own events: nothing is too short for it."""

    def __init__(self, pi):
        self.pi = pi
        self.base = int(pi.run("for c in /sys/class/gpio/gpiochip*; do grep -q pinctrl $c/label && cat $c/base; done"))
        pi.run(f"echo get==0 >{TRACE}/events/gpio/gpio_value/filter")
        self.forget()

    def forget(self):
        self.pi.run(f"echo >{TRACE}/trace")

    def driven(self):
        """For each relay what its line was told, in order: "out" when it became an output, True for closed, False for open."""
        told = {name: [] for name in RELAYS}
        names = {self.base + line: name for name, (line, _) in RELAYS.items()}
        for value, number, rest in re.findall(r"gpio_(value|direction): (\d+) +(.*)", self.pi.run(f"cat {TRACE}/trace")):
            name = names.get(int(number))
            if name and value == "direction":
                told[name].append(rest.split()[0])
            elif name:
                told[name].append(closed(name, rest == "set 1"))
        return told

    def changes(self):
        """For each relay its states in order, each only once."""
        return {name: once(each for each in told if isinstance(each, bool)) for name, told in self.driven().items()}


def once(states):
    """Without those that repeat the one before."""
    kept = []
    for state in states:
        if not kept or kept[-1] != state:
            kept.append(state)
    return kept
