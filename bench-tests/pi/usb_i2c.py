"""A USB-to-I2C adapter as QEMU sees it: the protocol of usbredir (usbredir-protocol.txt, version 0.7) outside, that of the kernel's
i2c-tiny-usb driver (drivers/i2c/busses/i2c-tiny-usb.c) inside."""
import socket
import struct
import threading

HELLO, CONNECT, INTERFACES, ENDPOINTS = 0, 1, 4, 5
SET_CONFIGURATION, GET_CONFIGURATION, CONFIGURATION_STATUS = 6, 7, 8
SET_ALT, GET_ALT, ALT_STATUS, CONTROL = 9, 10, 11, 100
PACKET_SIZES, LONG_NUMBERS, LONG_BULK = 1 << 4, 1 << 5, 1 << 6
STALL = 4

VENDOR, PRODUCT, RELEASE = 0x0403, 0xC631, 0x0205  # "EZPrototypes", in the driver's table of devices
DEVICE = struct.pack("<BBHBBBBHHHBBBB", 18, 1, 0x110, 0xFF, 0, 0, 8, VENDOR, PRODUCT, RELEASE, 1, 2, 0, 1)
CONFIGURATION = struct.pack("<BBHBBBBB", 9, 2, 18, 1, 1, 0, 0x80, 50) + struct.pack("<9B", 9, 4, 0, 0, 0, 0, 0, 0, 0)
CAN_PLAIN_I2C_AND_SMBUS = 0x0EFF0001
ACKNOWLEDGED, NOT_ACKNOWLEDGED = 1, 2
READ = 1


def text(words):
    raw = words.encode("utf-16le")
    return bytes([len(raw) + 2, 3]) + raw


DESCRIPTORS = {1: [DEVICE], 2: [CONFIGURATION], 3: [b"\x04\x03\x09\x04", text("bench"), text("I2C of the bench")]}


class Adapter:
    """Serves chips to one QEMU over a UNIX socket, on a thread of its own."""

    def __init__(self, chips):
        self.chips = chips
        self.lock = threading.Lock()
        self.status = ACKNOWLEDGED

    def serve(self, path):
        self.peer = socket.socket(socket.AF_UNIX)
        self.peer.connect(path)
        threading.Thread(target=self.run, daemon=True).start()

    def run(self):
        try:
            self.greet()
            while True:
                kind, length, number = struct.unpack("<IIQ", self.take(16))
                self.answer(kind, number, self.take(length))
        except (EOFError, OSError):
            return  # QEMU is gone

    def take(self, length):
        got = b""
        while len(got) < length:
            more = self.peer.recv(length - len(got))
            if not more:
                raise EOFError
            got += more
        return got

    def send(self, kind, number, body):
        self.peer.sendall(struct.pack("<IIQ", kind, len(body), number) + body)

    def greet(self):
        """The first header's number has four bytes, later ones eight, as both sides then know of."""
        hello = b"bench".ljust(64, b"\0") + struct.pack("<I", PACKET_SIZES | LONG_NUMBERS | LONG_BULK)
        self.peer.sendall(struct.pack("<III", HELLO, len(hello), 0) + hello)
        _, length, _ = struct.unpack("<III", self.take(12))
        self.take(length)
        control_only = bytes([0] + [255] * 15) * 2 + bytes(64) + struct.pack("<32H", *([8] + [0] * 15) * 2)
        self.send(ENDPOINTS, 0, control_only)
        self.send(INTERFACES, 0, struct.pack("<I", 1) + bytes(128))
        self.send(CONNECT, 0, struct.pack("<BBBBHH", 1, 0xFF, 0, 0, VENDOR, PRODUCT))

    def answer(self, kind, number, body):
        if kind == CONTROL:
            end, request, kind_of, _, value, index, length = struct.unpack("<BBBBHHH", body[:10])
            status, data = self.control(request, kind_of, value, index, length, body[10:])
            inward = bool(end & 0x80)
            moved = len(data) if inward else (0 if status else length)
            head = struct.pack("<BBBBHHH", end, request, kind_of, status, value, index, moved)
            self.send(CONTROL, number, head + (data if inward else b""))
        elif kind in (SET_CONFIGURATION, GET_CONFIGURATION):
            self.send(CONFIGURATION_STATUS, number, bytes([0, 1]))
        elif kind in (SET_ALT, GET_ALT):
            self.send(ALT_STATUS, number, bytes([0, body[0], 0]))

    def control(self, request, kind_of, value, index, length, data):
        if kind_of == 0x80 and request == 6:
            held = DESCRIPTORS.get(value >> 8, [])
            which = value & 0xFF
            return (0, held[which][:length]) if which < len(held) else (STALL, b"")
        if kind_of & 0x60 == 0x40:
            return self.adapter(request, value, index, length, data)
        return (0, b"\0\0"[:length]) if request == 0 else (STALL, b"")

    def adapter(self, request, value, index, length, data):
        """CMD_ECHO, CMD_GET_FUNC, CMD_SET_DELAY, CMD_GET_STATUS; from 4 on CMD_I2C_IO with its flags for begin and end."""
        if request == 0:
            return 0, struct.pack("<H", value)[:length]
        if request == 1:
            return 0, struct.pack("<I", CAN_PLAIN_I2C_AND_SMBUS)[:length]
        if request == 2:
            return 0, b""
        if request == 3:
            return 0, bytes([self.status])
        return 0, self.transfer(index, value, length, data)

    def transfer(self, address, flags, length, data):
        chip = self.chips.get(address)
        with self.lock:
            if chip is None:
                self.status = NOT_ACKNOWLEDGED
                return bytes(length if flags & READ else 0)
            if flags & READ:
                got = chip.i2c_read(length)
                self.status = NOT_ACKNOWLEDGED if got is None else ACKNOWLEDGED
                return bytes(length) if got is None else got
            # A write of nothing only asks whether somebody is there.
            there = chip.i2c_write(data) if data else not chip.unplugged
            self.status = ACKNOWLEDGED if there else NOT_ACKNOWLEDGED
            return b""
