"""Reads the service's record out of the guest."""
import base64
import pathlib
import sqlite3
import tempfile


def frames(pi):
    """What each recorded frame holds of the sensors: for each, in the settings' order, its temperature and humidity."""
    with tempfile.TemporaryDirectory() as folder:
        file = pathlib.Path(folder, "record.db")
        file.write_bytes(base64.b64decode(pi.run("base64 -w0 /var/lib/rimeward/record.db")))
        connection = sqlite3.connect(file)
        rows = [text for (text,) in connection.execute("SELECT sensors FROM frame ORDER BY id")]
        connection.close()
    return [[tuple(number(each) for each in sensor.split("/")) for sensor in row.split(" ")] for row in rows]


def number(text):
    """A reading is value@age; anything else says why there is none."""
    value, _, age = text.partition("@")
    return float(value) if age else text
