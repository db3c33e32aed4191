"""A DS18B20 at the level of time slots (datasheet DS18B20, "1-Wire Bus System" and "Function Commands")."""
import struct


def dallas_crc(data):
    crc = 0
    for byte in data:
        for bit in range(8):
            differs = (crc ^ byte >> bit) & 1
            crc = crc >> 1 ^ (0x8C if differs else 0)
    return bytes([crc])


def bits(data):
    return [byte >> bit & 1 for byte in data for bit in range(8)]


def number(some_bits):
    return sum(bit << i for i, bit in enumerate(some_bits))


class Thermometer:
    FAMILY = b"\x28"

    def __init__(self, serial, air_c):
        rom = self.FAMILY + serial.to_bytes(6, "little")
        self.rom = bits(rom + dallas_crc(rom))
        self.air_c = air_c
        self.present = True
        self.scratch_16ths = 85 * 16  # what it holds at power-on
        self.settings = b"\x4b\x46\x7f"
        self.reset()

    def reset(self):
        self.listens, self.got, self.says = self.rom_command, [], []

    def slot(self, bit):
        """What it makes of one time slot: 0 where it pulls the wire low, 1 where it leaves it."""
        if self.says:
            return self.says.pop(0)
        self.listens(bit)
        return 1

    def deaf(self, bit):
        """Until the next reset."""

    def byte(self, bit):
        """The byte that this bit completes, or None."""
        self.got.append(bit)
        if len(self.got) < 8:
            return None
        whole, self.got = number(self.got), []
        return whole

    def rom_command(self, bit):
        command = self.byte(bit)
        if command == 0x55:
            self.listens = self.match
        elif command == 0xCC:
            self.listens = self.function
        elif command == 0xF0:
            self.listens, self.place = self.search, 0
            self.offer()
        elif command == 0x33:
            self.listens, self.says = self.function, list(self.rom)
        elif command is not None:
            self.listens = self.deaf

    def offer(self):
        """A search asks for each bit and for its inverse, then tells which way it goes on."""
        self.says = [self.rom[self.place], 1 - self.rom[self.place]]

    def search(self, way):
        if way != self.rom[self.place]:
            self.listens = self.deaf
            return
        self.place += 1
        if self.place == 64:
            self.listens = self.function
        else:
            self.offer()

    def match(self, bit):
        self.got.append(bit)
        if bit != self.rom[len(self.got) - 1]:
            self.listens = self.deaf
        elif len(self.got) == 64:
            self.listens, self.got = self.function, []

    def function(self, bit):
        command = self.byte(bit)
        if command == 0x44:
            self.scratch_16ths = round(self.air_c * 16)
        elif command == 0xBE:
            pad = struct.pack("<h", self.scratch_16ths) + self.settings + b"\xff\x0c\x10"
            self.says = bits(pad + dallas_crc(pad))
        elif command == 0x4E:
            self.listens = self.set_up

    def set_up(self, bit):
        self.got.append(bit)
        if len(self.got) == 24:
            self.settings = bytes(number(self.got[at : at + 8]) for at in (0, 8, 16))
            self.listens = self.deaf
