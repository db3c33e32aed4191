"""What every chip on the emulated Pi's I2C bus has in common."""


class Chip:
    """Answers write(bytes) with whether it acknowledges, and read(n) with bytes, or None where it does not acknowledge. What it measures are
    plain attributes that the bench sets; unplugged, it answers nobody."""

    def __init__(self):
        self.unplugged = False

    def i2c_write(self, data):
        return not self.unplugged and self.write(data)

    def i2c_read(self, length):
        return None if self.unplugged else self.read(length)
