package rimeward.site;

import java.util.Locale;

/** How the controller sees what a machine draws. */
public sealed interface Meter {
    /** How it comes in, as people say it. */
    String inWords();

    /**
     * Longest time from pulse to pulse at rated power, s. Control looks 20 s after a switching ({@code core.watch}): by then a machine
     * that draws half of its rating has given two pulses, and one that has given none draws less than a quarter.
     */
    double MOST_SPACING_S = 5;

    record NotFitted() implements Meter {
        @Override
        public String inWords() {
            return "not seen";
        }
    }

    /** There is one, and nothing of it reaches this program but simulated or replayed. */
    record NotAttached() implements Meter {
        @Override
        public String inWords() {
            return "not attached";
        }
    }

    /** The pulse output of an electricity meter (S0, IEC 62053-31) on a line, one pulse for each {@code 1/pulsesPerKWh} kWh. */
    record Pulses(InputLine at, double pulsesPerKWh) implements Meter {
        public Pulses {
            checkPulses(pulsesPerKWh);
        }

        @Override
        public String inWords() {
            return pulses(pulsesPerKWh) + " on " + at.inWords();
        }
    }

    /**
     * The same, counted by the kernel.
     *
     * @param device what the counter's file {@code name} says
     * @param count number of the count in it
     */
    record Counter(String device, int count, double pulsesPerKWh) implements Meter {
        public Counter {
            Check.that(!device.isBlank(), "a counter needs its name");
            Check.within("count", count, 0, 63);
            checkPulses(pulsesPerKWh);
        }

        @Override
        public String inWords() {
            return pulses(pulsesPerKWh) + " in the kernel's counter " + device + ", count " + count;
        }
    }

    /** An auxiliary contact, or an opto-coupler on the machine's supply: active counts as rated power, else none is drawn. */
    record Running(InputLine at) implements Meter {
        @Override
        public String inWords() {
            return "contact on " + at.inWords();
        }
    }

    /**
     * A power chip that the kernel reads.
     *
     * @param device what its file {@code name} says, or its place on an I2C bus as hwmon writes it: {@code 1-0040}
     * @param channel number in the file's name: 1 for {@code power1_input}
     */
    record PowerFile(Driver driver, String device, int channel) implements Meter {
        public PowerFile {
            Check.that(!device.isBlank(), "a power chip needs its name");
            Check.within("channel", channel, 0, 63);
        }

        @Override
        public String inWords() {
            return "the kernel's " + driver.name().toLowerCase(Locale.ROOT) + ", " + device + " channel " + channel;
        }
    }

    /** The part of the kernel that reads a power chip. */
    enum Driver {
        HWMON,
        IIO
    }

    default boolean isFitted() {
        return !(this instanceof NotFitted);
    }

    /** Whether something real brings it in. */
    default boolean isAttached() {
        return isFitted() && !(this instanceof NotAttached);
    }

    /** The fewest pulses that show soon enough what a machine of this power does. */
    static double fewestPulsesPerKWh(double ratedW) {
        return 3.6e6 / (ratedW * MOST_SPACING_S);
    }

    private static String pulses(double pulsesPerKWh) {
        boolean whole = pulsesPerKWh == StrictMath.rint(pulsesPerKWh);
        return (whole ? String.valueOf((long) pulsesPerKWh) : String.valueOf(pulsesPerKWh)) + " pulses/kWh";
    }

    private static void checkPulses(double pulsesPerKWh) {
        Check.within("pulsesPerKWh", pulsesPerKWh, 1, 100_000);
    }
}
