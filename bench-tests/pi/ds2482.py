"""A 1-Wire master on the I2C bus, and what hangs on its wire."""
from chip import Chip


class Ds2482(Chip):
    """A 1-Wire master with one channel (datasheet DS2482-100, "Function Commands") and the thermometers on its wire."""

    STATUS, DATA, CONFIG = 0xF0, 0xE1, 0xC3

    def __init__(self, *thermometers):
        super().__init__()
        self.wire = thermometers
        self.registers = {self.STATUS: 0x18, self.DATA: 0, self.CONFIG: 0}
        self.pointer = self.STATUS

    def present(self):
        return [each for each in self.wire if each.present]

    def read(self, length):
        return bytes([self.registers.get(self.pointer, 0xFF)]) * length

    def write(self, data):
        command, operand = data[0], data[1] if len(data) > 1 else 0
        self.pointer = self.STATUS
        if command == 0xF0:
            self.registers.update({self.STATUS: 0x18, self.CONFIG: 0})
        elif command == 0xE1:
            self.pointer = operand
        elif command == 0xD2:
            self.registers[self.CONFIG] = operand & 0x0F
            self.status(0x10, False)
            self.pointer = self.CONFIG
        elif command == 0xB4:
            for each in self.wire:
                each.reset()
            self.status(0x02, bool(self.present()))
        elif command == 0x87:
            self.status(0x20, self.slot(operand >> 7))
        elif command == 0xA5:
            for bit in range(8):
                self.slot(operand >> bit & 1)
        elif command == 0x96:
            self.registers[self.DATA] = sum(self.slot(1) << bit for bit in range(8))
        elif command == 0x78:
            self.triplet(operand >> 7)
        else:
            return False  # 0xC3 too: the part with eight channels would take it
        return True

    def status(self, bit, on):
        self.registers[self.STATUS] = self.registers[self.STATUS] & ~bit | (bit if on else 0)

    def slot(self, bit):
        """One time slot. Writing a one and reading look alike on the wire: who has something to say pulls it low."""
        answers = [each.slot(bit) for each in self.present()]
        return bit & min(answers, default=1)

    def triplet(self, wanted):
        true, inverse = self.slot(1), self.slot(1)
        way = wanted if true == inverse == 0 else true
        self.slot(way)
        self.status(0x20, bool(true))
        self.status(0x40, bool(inverse))
        self.status(0x80, bool(way))
