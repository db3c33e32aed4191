"""What the bench plugs in."""
from bme280 import Bme280
from ds2482 import Ds2482
from one_wire import Thermometer
from sht import Sht3x, Sht4x


def bus(values):
    """The chips by address, for the bus, and by sensor's name, for the bench. Of both humidity chips one is read by the kernel, the other by
    the service.

    values: air_c and rh_percent by sensor's name
    """
    thermometer = Thermometer(0x0316A2794BFF, values["ds18b20"][0])
    another = Thermometer(0x0316A2794C01, -3.5)
    by_name = {
        "sht3x": Sht3x(*values["sht3x"]),
        "sht4x": Sht4x(*values["sht4x"]),
        "hwmon-sht4x": Sht4x(*values["hwmon-sht4x"]),
        "hwmon-sht3x": Sht3x(*values["hwmon-sht3x"]),
        "bme280": Bme280(*values["bme280"]),
    }
    by_address = dict(zip((0x44, 0x45, 0x46, 0x47, 0x76), by_name.values()))
    by_address[0x18] = Ds2482(thermometer, another)
    return by_address, {**by_name, "ds18b20": thermometer}
