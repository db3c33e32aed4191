package rimeward.adapter.pi;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import org.junit.jupiter.api.Test;
import rimeward.core.reading.Loss;
import rimeward.core.reading.Reading;
import rimeward.core.reading.SensorReading;
import rimeward.site.Attached;

class ShtProbeTest {

    @Test
    void checksumOfTheDatasheetsExample() {
        // Datasheet SHT3x-DIS, version 5, May 2018, table 20: CRC (0xBEEF) = 0x92
        assertThat(Crc8.of(new byte[] {(byte) 0xBE, (byte) 0xEF}, 0, 2)).isEqualTo(0x92);
    }

    @Test
    void formulasOfTheDatasheets() {
        // SHT3x: its datasheet, 4.13. SHT4x: as drivers/hwmon/sht4x.c has it; its datasheet from memory.
        // raw 0x6666 = 26214 is two fifths of full scale: −45 + 70 = 25 °C; 40 % for SHT3x, −6 + 50 = 44 % for SHT4x
        byte[] answer = answer(0x6666, 0x6666);
        assertThat(air(Attached.Chip.SHT3X, answer)).isCloseTo(25, within(1e-9));
        assertThat(rh(Attached.Chip.SHT3X, answer)).isCloseTo(40, within(1e-9));
        assertThat(rh(Attached.Chip.SHT4X, answer)).isCloseTo(44, within(1e-9));
        assertThat(rh(Attached.Chip.SHT4X, answer(0x6666, 0xFFFF))).isEqualTo(100);
        assertThat(rh(Attached.Chip.SHT4X, answer(0x6666, 0))).isZero();
    }

    @Test
    void deadBusesAndFlippedBitsFailTheChecksum() {
        badChecksum(new byte[6]);
        badChecksum(new byte[] {-1, -1, -1, -1, -1, -1});
        byte[] flipped = answer(0x6666, 0x6666);
        flipped[4] ^= 0x10;
        badChecksum(flipped);
    }

    @Test
    void nobodyAcknowledges() {
        I2cBus silent = (address, command, waitMs, length) -> {
            throw new IOException("Remote I/O error");
        };
        assertThat(new ShtProbe(silent, at(Attached.Chip.SHT4X)).read())
                .isEqualTo(new SensorReading(Reading.NO_ANSWER, Reading.NO_ANSWER));
    }

    @Test
    void eachChipIsAskedInItsOwnWords() {
        I2cBus bus = (address, command, waitMs, length) -> {
            assertThat(address).isEqualTo(0x44);
            assertThat(length).isEqualTo(6);
            assertThat(waitMs).isGreaterThanOrEqualTo(command.length == 2 ? 16 : 9);
            return command.length == 2 ? answer(0, 0) : answer(0xFFFF, 0);
        };
        assertThat(new ShtProbe(bus, at(Attached.Chip.SHT3X)).read().airC()).isEqualTo(new Reading.Value(-45, 0));
        assertThat(new ShtProbe(bus, at(Attached.Chip.SHT4X)).read().airC()).isEqualTo(new Reading.Value(130, 0));
    }

    static byte[] answer(int rawAir, int rawRh) {
        byte[] bytes = {(byte) (rawAir >> 8), (byte) rawAir, 0, (byte) (rawRh >> 8), (byte) rawRh, 0};
        bytes[2] = (byte) Crc8.of(bytes, 0, 2);
        bytes[5] = (byte) Crc8.of(bytes, 3, 2);
        return bytes;
    }

    private static void badChecksum(byte[] answer) {
        Reading bad = new Reading.Lost(Loss.BAD_CHECKSUM);
        assertThat(read(Attached.Chip.SHT4X, answer)).isEqualTo(new SensorReading(bad, bad));
    }

    private static double air(Attached.Chip chip, byte[] answer) {
        return ((Reading.Value) read(chip, answer).airC()).value();
    }

    private static double rh(Attached.Chip chip, byte[] answer) {
        return ((Reading.Value) read(chip, answer).rhPercent()).value();
    }

    private static SensorReading read(Attached.Chip chip, byte[] answer) {
        return new ShtProbe((address, command, waitMs, length) -> answer, at(chip)).read();
    }

    private static Attached.I2c at(Attached.Chip chip) {
        return new Attached.I2c(chip, 1, 0x44);
    }
}
