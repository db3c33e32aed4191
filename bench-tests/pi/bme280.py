"""Bosch's chip for temperature, humidity and pressure."""
import struct

from chip import Chip


class Bme280(Chip):
    """Datasheet BME280, 4.2.3 (formulas) and 5.3 (registers): raw numbers are found such that the chip's own formula gives the value."""

    T = (27504, 26435, -1000)  # the datasheet's example of calibration
    H = (75, 362, 0, 324, 50, 30)
    P = (36477, -10685, 3024, 2855, 140, -7, 15500, -14600, 6000)

    def __init__(self, air_c, rh_percent):
        super().__init__()
        self.air_c, self.rh_percent = air_c, rh_percent
        self.pointer = 0
        self.control = {0xF2: 0, 0xF4: 0, 0xF5: 0}

    def write(self, data):
        self.pointer = data[0]
        for register, value in zip(data[0::2], data[1::2]):
            if register in self.control:
                self.control[register] = value
        return True

    def read(self, length):
        start, self.pointer = self.pointer, self.pointer + length & 0xFF
        return (self.registers() * 2)[start : start + length]

    def fine(self, raw):
        t1, t2, t3 = self.T
        return (((raw >> 3) - (t1 << 1)) * t2 >> 11) + (((((raw >> 4) - t1) ** 2 >> 12) * t3) >> 14)

    def humidity_1024(self, raw, fine):
        h1, h2, h3, h4, h5, h6 = self.H
        v = fine - 76800
        v = ((raw << 14) - (h4 << 20) - h5 * v + 16384 >> 15) * (
            (((v * h6 >> 10) * ((v * h3 >> 11) + 32768) >> 10) + 2097152) * h2 + 8192 >> 14
        )
        v -= ((v >> 15) ** 2 >> 7) * h1 >> 4
        return max(0, min(v, 419430400)) >> 12

    def registers(self):
        air = first(1 << 20, lambda raw: self.fine(raw) * 5 + 128 >> 8 >= round(self.air_c * 100))
        fine = self.fine(air)
        damp = first(1 << 16, lambda raw: self.humidity_1024(raw, fine) >= round(self.rh_percent * 1024))
        pressure = 0x60000
        h1, h2, h3, h4, h5, h6 = self.H
        m = bytearray(256)
        m[0x88:0xA0] = struct.pack("<HhhHhhhhhhhh", *self.T, *self.P)
        m[0xA1] = h1
        m[0xE1:0xE8] = struct.pack("<hBBBBb", h2, h3, h4 >> 4, h4 & 15 | (h5 & 15) << 4, h5 >> 4 & 0xFF, h6)
        m[0xD0] = 0x60
        for register, value in self.control.items():
            m[register] = value
        m[0xF7:0xFD] = (pressure << 4).to_bytes(3, "big") + (air << 4).to_bytes(3, "big")
        m[0xFD:0xFF] = damp.to_bytes(2, "big")
        return bytes(m)


def first(end, holds):
    """The least number below `end` for which it holds; the greatest where it holds for none."""
    low, high = 0, end - 1
    while low < high:
        middle = (low + high) // 2
        low, high = (low, middle) if holds(middle) else (middle + 1, high)
    return low
