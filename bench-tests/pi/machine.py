"""The emulated Raspberry Pi 3B: QEMU, its serial line as a shell, and its GPIO lines seen from outside."""
import pathlib
import re
import socket
import subprocess
import threading
import time

GPIO = 0x3F200000
BOOT_S = 240
ANSWER_S = 60


class Pi:
    def __init__(self, cache, initrd, folder):
        """Starts it with a card that forgets what is written."""
        self.folder = pathlib.Path(folder)
        self.asking = threading.Lock()
        self.log = open(self.folder / "serial.log", "wb")
        # The first serial port is taken by the board's Bluetooth as soon as the kernel knows it: it can only tell, not listen.
        ports = ["-serial", f"file:{self.folder}/console.log"]
        for option in ("-serial", "-monitor"):
            ports += [option, f"unix:{self.folder}/{option[1:]},server=on,wait=off"]
        ports += ["-chardev", f"socket,id=usb,path={self.folder}/usb,server=on,wait=off", "-device", "usb-redir,chardev=usb"]
        board = ["-M", "raspi3b", "-accel", "tcg,thread=multi", "-no-reboot", "-display", "none", "-dtb", f"{cache}/board.dtb"]
        card = ["-drive", f"file={cache}/card.img,if=sd,format=raw,snapshot=on"]
        kernel = ["-kernel", f"{cache}/vmlinuz", "-initrd", str(initrd)]
        kernel += ["-append", "console=ttyAMA0,115200 quiet loglevel=3 panic=-1 systemd.show_status=0"]
        command = ["qemu-system-aarch64", *board, *ports, *card, *kernel]
        self.process = subprocess.Popen(command, stdin=subprocess.DEVNULL, stdout=self.log, stderr=self.log)

    def boot(self, chips):
        self.serial = connected(self.folder / "serial")
        self.monitor = connected(self.folder / "monitor")
        self.until(self.monitor, b"(qemu) ", ANSWER_S)
        chips.serve(str(self.folder / "usb"))
        self.answer(BOOT_S)

    def stop(self):
        """QEMU does not end when this board is switched off."""
        self.process.kill()
        self.process.wait()

    def until(self, line, mark, limit_s):
        got, end = b"", time.monotonic() + limit_s
        while not (re.search(mark, got) if isinstance(mark, re.Pattern) else got.endswith(mark)):
            left = end - time.monotonic()
            if left <= 0:
                raise TimeoutError(f"no answer within {limit_s} s; the last was: {got[-2000:].decode(errors='replace')}")
            line.settimeout(left)
            try:
                more = line.recv(65536)
            except TimeoutError:
                continue
            if not more:
                raise EOFError("QEMU has ended; its words are in serial.log")
            got += more
            if line is self.serial:
                self.log.write(more)
                self.log.flush()
        return got.decode(errors="replace")

    def answer(self, limit_s):
        text = self.until(self.serial, re.compile(rb"\x1b=\d+\r?\n"), limit_s)
        words, _, code = text.rpartition("\x1b=")
        return words.replace("\r", ""), int(code)

    def ask(self, command, limit_s=ANSWER_S):
        """Runs a command in the guest: its output and exit code."""
        self.log.write(f"\n>>> {command}\n".encode())
        self.serial.sendall(command.encode() + b"\n")
        return self.answer(limit_s)

    def run(self, command, limit_s=ANSWER_S):
        words, code = self.ask(command, limit_s)
        if code:
            raise AssertionError(f"in the guest, exit code {code}: {command}\n{words}")
        return words

    def last_words(self):
        """What the service's journal says at the end, if the guest still answers."""
        try:
            return self.ask("journalctl -u rimeward -o cat --no-pager | tail -40")[0]
        except (TimeoutError, EOFError, OSError) as e:
            return f"the guest says nothing more: {e}"

    def gpio(self):
        """All registers of the GPIO lines at one moment."""
        with self.asking:
            self.monitor.sendall(f"xp /{Gpio.WORDS}wx {GPIO:#x}\n".encode())
            text = self.until(self.monitor, b"(qemu) ", ANSWER_S)
        return Gpio([int(each, 16) for each in re.findall(r"0x[0-9a-f]{8}(?![0-9a-f]*:)", text.split("\n", 1)[1])])


class Gpio:
    """BCM2835 ARM Peripherals, 6.1: function select from word 0 on, ten lines a word; levels in words 13 and 14."""

    WORDS = 15
    OUTPUT = 1

    def __init__(self, words):
        self.words = words

    def is_high(self, line):
        return bool(self.words[13 + line // 32] >> line % 32 & 1)

    def is_output(self, line):
        return self.words[line // 10] >> line % 10 * 3 & 7 == self.OUTPUT


def connected(path):
    end = time.monotonic() + 20
    while True:
        try:
            line = socket.socket(socket.AF_UNIX)
            line.connect(str(path))
            return line
        except OSError:
            line.close()
            if time.monotonic() > end:
                raise
            time.sleep(0.05)
