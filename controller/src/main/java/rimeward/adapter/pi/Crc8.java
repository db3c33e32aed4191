package rimeward.adapter.pi;

/** The checksum of Sensirion's humidity chips: polynomial 0x31, start 0xFF, no reflection (datasheet SHT3x-DIS, version 5, table 20; drivers/hwmon/sht4x.c). */
final class Crc8 {
    private Crc8() {}

    static int of(byte[] bytes, int from, int length) {
        int crc = 0xFF;
        for (int i = from; i < from + length; i++) {
            crc ^= bytes[i] & 0xFF;
            for (int bit = 0; bit < 8; bit++) {
                crc = (crc & 0x80) != 0 ? ((crc << 1) ^ 0x31) & 0xFF : (crc << 1) & 0xFF;
            }
        }
        return crc;
    }
}
