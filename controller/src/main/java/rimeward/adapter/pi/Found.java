package rimeward.adapter.pi;

import rimeward.site.Attached;

/**
 * One thing that was found on this machine.
 *
 * @param name how it is told from its like: an address, a device's name, a chip's label
 * @param what what it is, in words
 * @param attached what a sensor's settings say to read it; {@link Attached.NotAttached} for what they cannot name
 */
public record Found(Kind kind, String name, String what, Attached attached) {
    /** Where it was looked for. */
    public enum Kind {
        GPIO_CHIP("GPIO chips"),
        I2C("I2C buses"),
        ONE_WIRE("1-Wire"),
        HWMON("hwmon (the kernel's own sensor drivers)"),
        IIO("iio (the kernel's industrial I/O)");

        private final String heading;

        Kind(String heading) {
            this.heading = heading;
        }

        public String heading() {
            return heading;
        }
    }
}
