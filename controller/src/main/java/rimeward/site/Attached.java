package rimeward.site;

/** How a sensor's readings reach the controller. */
public sealed interface Attached {
    /** Where it hangs, as people say it. */
    String inWords();

    /** Nothing yet: simulated, replayed, or not connected. */
    record NotAttached() implements Attached {
        @Override
        public String inWords() {
            return "not attached";
        }
    }

    /**
     * A chip that this program asks itself, with its checksum.
     *
     * @param bus number of the I2C bus: 1 for {@code /dev/i2c-1}
     * @param address 7-bit address
     */
    record I2c(Chip chip, int bus, int address) implements Attached {
        public I2c {
            checkI2c(bus, address);
        }

        @Override
        public String inWords() {
            return chip.inWords() + " read directly, " + place(bus, address);
        }
    }

    /** A chip on an I2C bus that the kernel's hwmon driver reads. */
    record Hwmon(int bus, int address) implements Attached {
        public Hwmon {
            checkI2c(bus, address);
        }

        @Override
        public String inWords() {
            return "the kernel's hwmon, " + place(bus, address);
        }
    }

    /**
     * A DS18B20 on the kernel's 1-Wire bus.
     *
     * @param device its folder's name: {@code 28-0123456789ab}
     */
    record OneWire(String device) implements Attached {
        public OneWire {
            Check.that(isName(device), "1-Wire device is \"" + device + "\"; it must look like 28-0123456789ab");
        }

        @Override
        public String inWords() {
            return "1-Wire " + device;
        }

        /** Whether it is the name of a DS18B20's folder. */
        public static boolean isName(String device) {
            return device.matches("28-[0-9a-f]{12}");
        }
    }

    /**
     * A device of the kernel's industrial I/O: DHT22, BME280.
     *
     * @param device what its file {@code name} says: {@code bme280}, {@code dht11@4}
     */
    record Iio(String device) implements Attached {
        public Iio {
            Check.that(!device.isBlank(), "an iio device needs its name");
        }

        @Override
        public String inWords() {
            return "the kernel's iio, " + device;
        }
    }

    /** Readings that others hand in under a topic of MQTT. */
    record HandedIn(String topic) implements Attached {
        public HandedIn {
            Check.that(isTopic(topic), "topic is \"" + topic + "\"; it must name one topic, without + and #");
        }

        private static boolean isTopic(String topic) {
            return !topic.isBlank() && topic.chars().noneMatch(c -> c == '+' || c == '#' || c < ' ');
        }

        @Override
        public String inWords() {
            return "handed in under " + topic;
        }
    }

    /** Chips with a reading code of our own. */
    enum Chip {
        SHT3X("SHT3x"),
        SHT4X("SHT4x");

        private final String words;

        Chip(String words) {
            this.words = words;
        }

        String inWords() {
            return words;
        }
    }

    private static String place(int bus, int address) {
        return "bus " + bus + " address 0x" + Integer.toHexString(address);
    }

    private static void checkI2c(int bus, int address) {
        Check.within("I2C bus", bus, 0, 255);
        Check.within("I2C address", address, 0x08, 0x77); // the rest is reserved: I2C-bus specification UM10204, 3.1.12
    }
}
