"""Runs the bench: try_pi.py CACHE DEB [STEP...]; a line for each step, exit code 1 if one failed."""
import pathlib
import shutil
import signal
import subprocess
import sys
import tempfile
import time

from bus import bus
from machine import Pi
from night import DUSK
from steps import STEPS, Bench
from usb_i2c import Adapter

HERE = pathlib.Path(__file__).resolve().parent
KERNEL_READS = "sht4x 0x46\nsht3x 0x47\nbme280 0x76\nds2482 0x18\n"


def initrd(cache, deb, folder):
    """The bench's drivers, and behind them what this run brings along."""
    bench = folder / "tree" / "bench"
    bench.mkdir(parents=True)
    shutil.copy(deb, bench / "rimeward.deb")
    shutil.copy(HERE / "tunnel.toml", bench)
    (bench / "chips").write_text(KERNEL_READS)
    packed = subprocess.run("find . | cpio -o -H newc --quiet", shell=True, cwd=folder / "tree", check=True, capture_output=True)
    both = folder / "initrd"
    both.write_bytes((cache / "init.cpio").read_bytes() + packed.stdout)
    return both


def tell(began, word, title, detail):
    print(f"{word:4} {time.monotonic() - began:6.1f} s  {title}{': ' + detail if detail else ''}", flush=True)


def play(pi, adapter, chips, names):
    """Runs the steps; the number that passed. The first that fails ends it."""
    passed, title, began = 0, "the emulated Pi boots", time.monotonic()
    try:
        pi.boot(adapter)
        tell(began, "ok", title, pi.run("uname -r").strip())
        bench = Bench(pi, chips)
        for name in names:
            title, began = getattr(bench, name).__doc__, time.monotonic()
            tell(began, "ok", title, getattr(bench, name)())
            passed += 1
    except (AssertionError, TimeoutError, EOFError) as e:
        tell(began, "FAIL", title, str(e))
        print(pi.last_words(), f"more in {pi.folder}", sep="\n")
    return passed


def main(cache, deb, names):
    signal.signal(signal.SIGTERM, lambda *_: sys.exit(1))  # so that QEMU is ended then too
    folder = pathlib.Path(tempfile.mkdtemp(prefix="rimeward-pi-"))
    by_address, by_name = bus(DUSK)
    pi = Pi(cache, initrd(cache, deb, folder), folder)
    try:
        passed = play(pi, Adapter(by_address), by_name, names)
    finally:
        pi.stop()
    failed = int(passed < len(names))
    print(f"{passed} passed, {failed} failed")
    if not failed:
        shutil.rmtree(folder)
    return failed


if __name__ == "__main__":
    sys.exit(main(pathlib.Path(sys.argv[1]), pathlib.Path(sys.argv[2]), sys.argv[3:] or STEPS))
