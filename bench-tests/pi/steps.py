"""What the bench does to the Pi, step by step, and what it must see. Each step returns a few words, or fails with an AssertionError."""
import re
import time

import record
from lines import AT_STOP, RELAYS, KernelLog, Lamps, once
from night import BENCHES, DUSK, FLOOR_C, Frost

STEP_K = {"ds18b20": 1 / 16}
LIMIT_S = 240  # for whatever takes seconds on a quiet machine


class Bench:
    def __init__(self, pi, chips):
        self.pi, self.chips = pi, chips
        self.lamps = Lamps(pi)

    # ---- what the steps share

    def until(self, what, holds, limit_s=LIMIT_S):
        end = time.monotonic() + limit_s
        while not (got := holds()):
            assert time.monotonic() < end, f"not within {limit_s} s: {what}"
            time.sleep(1)
        return got

    def journal(self):
        return self.pi.run("journalctl -u rimeward -o cat --no-pager")

    def said(self, words, times=1):
        self.until(f'the journal says "{words}" {times} times', lambda: self.journal().count(words) >= times)

    def decisions(self):
        """The relays that each line of the journal says are on, since the service last began."""
        lines = self.journal().rpartition("a decision every")[2]
        words = re.findall(r"coldest bench .*, on: (.*)", lines)
        return once(frozenset() if each == "nothing" else frozenset(each.split(", ")) for each in words)

    def main_pid(self):
        return self.pi.run("systemctl show -P MainPID rimeward").strip()

    def start(self):
        began = time.monotonic()
        self.pi.run("systemctl start rimeward", LIMIT_S)
        return f"ready after {time.monotonic() - began:.0f} s"

    # ---- steps

    def installs(self):
        """the package installs, and gives its user the lines and buses"""
        self.pi.run("dpkg -i --force-unsafe-io /run/bench/rimeward.deb", LIMIT_S)
        owners = self.pi.run("stat -c '%G %a %n' /dev/gpiochip0 /dev/i2c-$(cat /run/bench/bus)").split("\n")
        assert owners[0].startswith("gpio 660") and owners[1].startswith("i2c 660"), owners
        self.pi.run("sed s/BUS$/$(cat /run/bench/bus)/ /run/bench/tunnel.toml >/etc/rimeward/tunnel.toml")
        self.log = KernelLog(self.pi)
        return "groups gpio and i2c, mode 660"

    def wiring(self):
        """`rimeward wiring` finds and reads every sensor and clicks each relay alone, in order"""
        words = self.pi.run("rimeward wiring --yes /etc/rimeward/tunnel.toml", LIMIT_S)
        for name, (air_c, _) in DUSK.items():
            read = re.search(rf"^  {name} +(-?[0-9.]+) °C", words, re.M)
            assert read and abs(float(read[1]) - air_c) < 0.06, f"{name} is {air_c} °C:\n{words}"
        assert "not found" not in words, words
        clicks = [each for name in RELAYS for each in (AT_STOP ^ {name}, AT_STOP)]
        assert contains(self.lamps.seen, clicks), f"the lamps showed {[sorted(each) for each in self.lamps.seen]}"
        return f"{len(RELAYS)} relays, {len(DUSK)} sensors"

    def starts(self):
        """systemd starts it, hardened as shipped, and no line pulses"""
        self.log.forget()
        ready = self.start()
        for name, told in self.log.driven().items():
            assert told[:2] == [False, "out"], f"{name} was not open before it became an output: {told}"
            assert set(told) == {False, "out"}, f"{name} moved at the start: {told}"
        assert self.decisions() == [frozenset()], self.decisions()
        assert self.lamps.driven == set(RELAYS) and self.lamps.now == frozenset(), self.lamps.now
        return ready + ", " + self.pi.run("grep VmRSS /proc/$(systemctl show -P MainPID rimeward)/status").strip()

    def frost(self):
        """a frost night on the sensors switches the heater in time"""
        self.frost = Frost(self.chips, self.lamps)
        self.until("heater-1 closes", lambda: "heater-1" in self.lamps.now)
        first_c = self.frost.coldest_c
        return f"heater-1 closed at {first_c:.2f} °C"

    def unplugged(self):
        """sensors that stop answering, one read by the service, one by the kernel, are told, survived, and told when back"""
        for name in ("sht4x", "hwmon-sht4x"):
            self.chips[name].unplugged = True
        for name in ("sht4x", "hwmon-sht4x"):
            self.said(f"sensor {name} gives no sound reading")
        ticks = self.ticks()
        self.until("two more decisions", lambda: self.ticks() >= ticks + 2)
        for name in ("sht4x", "hwmon-sht4x"):
            self.chips[name].unplugged = False
        for name in ("sht4x", "hwmon-sht4x"):
            self.said(f"sensor {name} is back")
        return ""

    def ticks(self):
        return len(self.log.driven()["heater-1"])

    def follows(self):
        """the lines follow the decisions and nothing else, and the floor holds"""
        self.until("heater-1 opens again", lambda: "heater-1" not in self.lamps.now)
        self.frost.over = True
        decided = self.decisions()
        for name, changes in self.log.changes().items():
            assert changes == once(name in on for on in decided), f"{name}: driven {changes}, decided {decided}"
        assert self.frost.coldest_c >= FLOOR_C, f"a bench came to {self.frost.coldest_c:.2f} °C"
        return f"{len(decided)} decisions, lowest {self.frost.coldest_c:.2f} °C"

    def stops(self):
        """an orderly stop: exit code 0, every line in its stop state"""
        self.pi.run("systemctl stop rimeward", LIMIT_S)
        assert self.pi.run("systemctl show -P Result rimeward").strip() == "success"
        self.stop_state()
        return self.holding()

    def stop_state(self):
        self.lamps.look()
        assert self.lamps.now == AT_STOP, f"the lines say {set(self.lamps.now)}"

    def holding(self):
        """A word on who holds the levels now: this kernel makes a line that is let go an input, a Pi's own leaves it driven."""
        gpio = self.pi.gpio()
        held = [name for name, (line, _) in RELAYS.items() if gpio.is_output(line)]
        return f"still driven: {', '.join(held) or 'none; the kernel makes them inputs, and the pulls on the board decide'}"

    def recorded(self):
        """the record has the readings of every kind of sensor right, to the chip's own step"""
        first = record.frames(self.pi)[0]
        for (name, (air_c, rh_percent)), (air, rh) in zip(DUSK.items(), first):
            assert abs(air - air_c) <= STEP_K.get(name, 0.01), f"{name}: {air} °C, and it was {air_c}"
            assert rh == "-" if rh_percent is None else abs(rh - rh_percent) <= 0.01, f"{name}: {rh} %, and it was {rh_percent}"
        return ", ".join(f"{name} {air:.2f} °C" for name, (air, _) in zip(DUSK, first))

    def killed(self):
        """kill -9 while heating: the lines go to their stop state, and the service comes back and takes up its state"""
        self.start()
        for name in BENCHES:
            self.chips[name].air_c = FLOOR_C - 1
        self.until("both stages close", lambda: {"heater-1", "heater-2"} <= self.lamps.now)
        self.log.forget()
        began = time.monotonic()
        self.pi.run("kill -9 $(systemctl show -P MainPID rimeward)")
        self.until("heater-2 opens, heater-1 stays", lambda: self.lamps.now == AT_STOP)
        safe_s = time.monotonic() - began
        told = self.log.driven()
        assert told["heater-1"][:2] == [True, "out"] and told["heater-2"][:2] == [False, "out"], told
        self.until("it heats again", lambda: {"heater-1", "heater-2"} <= self.lamps.now)
        assert "takes up where it left off" in self.journal().rpartition("a decision every")[2]
        return f"safe after {safe_s:.1f} s, heats again after {time.monotonic() - began:.0f} s"

    def hangs(self):
        """a service that hangs is ended by the watchdog and started again"""
        began = time.monotonic()
        before = self.main_pid()
        self.pi.run(f"kill -STOP {before}")
        self.said("Watchdog timeout", 1)
        fired_s = time.monotonic() - began
        self.until("another process runs", lambda: self.main_pid() not in ("0", before))
        self.until("it heats again", lambda: self.pi.ask("systemctl is-active -q rimeward")[1] == 0)
        return f"watchdog after {fired_s:.0f} s, ready again after {time.monotonic() - began:.0f} s"


def contains(seen, wanted):
    return any(seen[at : at + len(wanted)] == wanted for at in range(len(seen)))


STEPS = ("installs", "wiring", "starts", "frost", "unplugged", "follows", "stops", "recorded", "killed", "hangs")
