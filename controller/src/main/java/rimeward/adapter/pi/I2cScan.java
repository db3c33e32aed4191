package rimeward.adapter.pi;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.IntPredicate;
import java.util.function.LongSupplier;
import rimeward.site.Attached;

/**
 * Asks which addresses of a bus answer. Chips are asked for what changes nothing in them: an SHT3x for its status, an SHT4x for its serial
 * number (datasheets SHT3x-DIS 4.11, SHT4x 4.5), all others for one byte. Nobody else may be reading meanwhile: a measurement that lies
 * ready would be taken for an answer.
 */
final class I2cScan {
    /** The rest is reserved: I2C-bus specification UM10204, 3.1.12. */
    private static final int FIRST = 0x08;

    private static final int LAST = 0x77;

    /** Addresses of both chips' datasheets. */
    private static final int SHT_FIRST = 0x44;

    private static final int SHT_LAST = 0x46;

    /** A sound bus answers or refuses at once; one that is held low takes the driver's second for each address. */
    private static final long PATIENCE_NS = 10_000_000_000L;

    private final int number;
    private final I2cBus bus;
    private final LongSupplier nanoTime;

    I2cScan(int number, I2cBus bus, LongSupplier nanoTime) {
        this.number = number;
        this.bus = bus;
        this.nanoTime = nanoTime;
    }

    /** @param isTaken addresses that a driver of the kernel holds: they are not asked */
    List<Found> run(IntPredicate isTaken) {
        List<Found> found = new ArrayList<>();
        long sinceNs = nanoTime.getAsLong();
        for (int address = FIRST; address <= LAST; address++) {
            if (nanoTime.getAsLong() - sinceNs > PATIENCE_NS) {
                found.add(plain(
                        "bus " + number,
                        "does not answer in time, given up at " + hex(address)
                                + "; one of its two wires may be held low"));
                break;
            }
            if (!isTaken.test(address)) {
                ask(address, found);
            }
        }
        return found;
    }

    private void ask(int address, List<Found> found) {
        String name = "bus " + number + ", " + hex(address);
        boolean maySht = address >= SHT_FIRST && address <= SHT_LAST;
        if (maySht && answers(address, new byte[] {(byte) 0xF3, 0x2D}, 2, 3)) {
            found.add(sht(name, "SHT3x", Attached.Chip.SHT3X, address));
        } else if (maySht && answers(address, new byte[] {(byte) 0x89}, 2, 6)) {
            found.add(sht(name, "SHT4x", Attached.Chip.SHT4X, address));
        } else if (answers(address, new byte[0], 0, 1)) {
            found.add(plain(name, "answers"));
        }
    }

    /** Whether it answers, each word with its checksum where it has one. */
    private boolean answers(int address, byte[] question, int waitMs, int length) {
        try {
            byte[] answer = bus.ask(address, question, waitMs, length);
            for (int at = 0; at + 3 <= length; at += 3) {
                if (Crc8.of(answer, at, 2) != (answer[at + 2] & 0xFF)) {
                    return false;
                }
            }
            return true;
        } catch (IOException e) {
            return false;
        }
    }

    private Found sht(String name, String what, Attached.Chip chip, int address) {
        return new Found(Found.Kind.I2C, name, what, new Attached.I2c(chip, number, address));
    }

    private static Found plain(String name, String what) {
        return new Found(Found.Kind.I2C, name, what, new Attached.NotAttached());
    }

    static String hex(int address) {
        return String.format(Locale.ROOT, "0x%02x", address);
    }
}
