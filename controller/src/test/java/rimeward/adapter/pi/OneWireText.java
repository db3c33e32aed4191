package rimeward.adapter.pi;

import java.util.Locale;

/** The file {@code w1_slave} of a DS18B20, as {@code w1_slave_show} in drivers/w1/slaves/w1_therm.c writes it. */
final class OneWireText {
    private OneWireText() {}

    /** With this temperature register; the other bytes as a new chip holds them (a scratchpad seen in the field, from memory). */
    static String of(int sixteenthsK, String verdict) {
        int[] pad = {sixteenthsK & 0xFF, (sixteenthsK >> 8) & 0xFF, 0x4B, 0x46, 0x7F, 0xFF, 0x0C, 0x10};
        StringBuilder bytes = new StringBuilder();
        for (int each : pad) {
            bytes.append(String.format(Locale.ROOT, "%02x ", each));
        }
        String crc = String.format(Locale.ROOT, "%02x", checksum(pad));
        bytes.append(crc).append(' ');
        int milliC = (short) sixteenthsK * 1000 / 16;
        return bytes + ": crc=" + crc + " " + verdict + "\n" + bytes + "t=" + milliC + "\n";
    }

    /** Maxim's 1-Wire CRC, x⁸ + x⁵ + x⁴ + 1, least bit first (its application note 27, from memory). */
    static int checksum(int[] bytes) {
        int crc = 0;
        for (int each : bytes) {
            crc ^= each;
            for (int bit = 0; bit < 8; bit++) {
                crc = (crc & 1) != 0 ? (crc >> 1) ^ 0x8C : crc >> 1;
            }
        }
        return crc;
    }
}
