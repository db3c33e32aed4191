"""Sensirion's humidity chips."""
import struct
import time

from chip import Chip


def sensirion_crc(data):
    crc = 0xFF
    for byte in data:
        crc ^= byte
        for _ in range(8):
            crc = (crc << 1) ^ 0x31 if crc & 0x80 else crc << 1
            crc &= 0xFF
    return bytes([crc])


def word(value):
    raw = struct.pack(">H", max(0, min(0xFFFF, round(value))))
    return raw + sensirion_crc(raw)


class Sht(Chip):
    """What both humidity chips share: a measurement is not there at once, and until then the chip does not acknowledge its read."""

    def __init__(self, air_c, rh_percent):
        super().__init__()
        self.air_c, self.rh_percent = air_c, rh_percent
        self.answer, self.ready_at = b"", 0.0

    def measure(self, takes_s):
        self.answer = word((self.air_c + 45) / 175 * 65535) + word(self.rh_raw())
        self.ready_at = time.monotonic() + takes_s

    def tell(self, answer):
        self.answer, self.ready_at = answer, 0.0

    def read(self, length):
        if not self.answer or time.monotonic() < self.ready_at:
            return None
        answer, self.answer = self.answer, b""  # told once
        return (answer + b"\xff" * length)[:length]


class Sht3x(Sht):
    """Datasheet SHT3x-DIS, 4.3 to 4.13. Status and limits are told so that the kernel's driver binds."""

    def rh_raw(self):
        return self.rh_percent / 100 * 65535

    def write(self, data):
        command = int.from_bytes(data[:2], "big") if len(data) >= 2 else 0
        self.tell(b"")
        if command >> 8 == 0x24:
            self.measure(0.0155)
        elif command >> 8 == 0x2C or command == 0xE000:  # stretches the clock instead, which has no bearing here; fetches
            self.measure(0)
        elif command == 0xF32D or command >> 8 == 0xE1:
            self.tell(word(0))
        elif command in (0x3780, 0x3682):
            self.tell(word(0x1234) + word(0x5678))
        return True


class Sht4x(Sht):
    """Datasheet SHT4x, 4.5 and 4.6."""

    def rh_raw(self):
        return (self.rh_percent + 6) / 125 * 65535

    def write(self, data):
        self.tell(b"")
        if data[0] in (0xFD, 0xF6, 0xE0):
            self.measure({0xFD: 0.0083, 0xF6: 0.0045, 0xE0: 0.0016}[data[0]])
        elif data[0] == 0x89:
            self.tell(word(0x1234) + word(0x5678))
        return True
