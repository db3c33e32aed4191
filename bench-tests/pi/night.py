"""The weather on the bench's sensors."""
import threading
import time

# Each sensor's °C and % at dusk, in the order of tunnel.toml.
DUSK = {
    "sht3x": (8.25, 71.5),
    "sht4x": (8.5, 64.25),
    "hwmon-sht4x": (8.75, 58.0),
    "hwmon-sht3x": (9.0, 52.5),
    "ds18b20": (9.25, None),
    "bme280": (-1.25, 77.0),  # outside
}
BENCHES = {name: air_c for name, (air_c, _) in DUSK.items() if name != "bme280"}
FLOOR_C = 4.0


class Frost:
    """Every bench cools by 1 K a minute, and each heater stage whose line says so warms it by 2: the controller must find the turn."""

    COOLS_K_PER_S = 1 / 60
    STAGE_K_PER_S = 2 / 60

    def __init__(self, chips, lamps):
        self.chips, self.lamps = chips, lamps
        self.shift_k = 0.0
        self.coldest_c = min(BENCHES.values())
        self.over = False
        threading.Thread(target=self.run, daemon=True).start()

    def run(self):
        last = time.monotonic()
        while not self.over:
            time.sleep(0.25)
            now = time.monotonic()
            stages = sum(name.startswith("heater") for name in self.lamps.now)
            self.shift_k += (now - last) * (stages * self.STAGE_K_PER_S - self.COOLS_K_PER_S)
            last = now
            self.set()

    def set(self):
        for name, dusk_c in BENCHES.items():
            self.chips[name].air_c = dusk_c + self.shift_k
            self.coldest_c = min(self.coldest_c, dusk_c + self.shift_k)
