package rimeward.adapter.pi;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.awaitility.Awaitility.await;

import java.nio.file.Path;
import java.util.List;
import java.util.OptionalLong;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rimeward.core.reading.Loss;
import rimeward.core.reading.Reading;
import rimeward.core.reading.Signal;
import rimeward.fixture.Sites;
import rimeward.site.Circuit;
import rimeward.site.Contact;
import rimeward.site.DryerKind;
import rimeward.site.Drying;
import rimeward.site.Heater;
import rimeward.site.InputLine;
import rimeward.site.Machine;
import rimeward.site.Meter;
import rimeward.site.Role;
import rimeward.site.Site;
import rimeward.site.Venting;
import rimeward.site.Wiring;

/** Float, door and meters, from the line or file to what control gets. */
class PiInputsTest {
    private static final InputLine FLOAT = new InputLine("pinctrl-rp1", 24, false, InputLine.Pull.UP);
    private static final InputLine DOOR = new InputLine("pinctrl-rp1", 25, true, InputLine.Pull.UP);
    private static final InputLine METER = new InputLine("pinctrl-rp1", 23, true, InputLine.Pull.UP);
    private static final Meter.Counter COUNTER = new Meter.Counter("counter-0", 0, 1000);
    private static final String COUNTER_FOLDER = "sys/bus/counter/devices/counter0/";

    @TempDir
    Path root;

    private final FakeLines lines = new FakeLines();
    private long nowNs = 7_000_000_000L;

    @Test
    void floatAndDoorAreRead() {
        lines.high.put(24, true);
        lines.high.put(25, false);
        PiSensors sensors = contacts();
        sensors.readOnce();
        assertThat(sensors.latch().tankFull()).isEqualTo(Signal.ON);
        assertThat(sensors.latch().doorOpen()).as("active low").isEqualTo(Signal.ON);
        lines.high.put(24, false);
        lines.high.put(25, true);
        settle(sensors);
        assertThat(sensors.latch().tankFull()).isEqualTo(Signal.OFF);
        assertThat(sensors.latch().doorOpen()).isEqualTo(Signal.OFF);
    }

    @Test
    void aContactThatBouncesHasNotChanged() {
        PiSensors sensors = contacts();
        sensors.readOnce();
        for (int i = 0; i < 20; i++) {
            lines.high.put(24, i % 2 == 0);
            passS(0.25);
            sensors.readOnce();
            assertThat(sensors.latch().tankFull()).isEqualTo(Signal.OFF);
        }
    }

    @Test
    void aLineThatCannotBeReadIsNeitherOpenNorClosedUntilItIsBack() {
        lines.high.put(24, true);
        PiSensors sensors = contacts();
        sensors.readOnce();
        lines.broken.add(24);
        passS(ContactCell.GRACE_S + 1);
        sensors.readOnce();
        assertThat(sensors.latch().tankFull()).isEqualTo(Signal.LOST);
        assertThat(sensors.latch().doorOpen()).as("the other one goes on").isEqualTo(Signal.ON);
        assertThat(lines.taken).as("let go, to be taken anew").doesNotContain(24);
        lines.broken.clear();
        sensors.readOnce();
        assertThat(sensors.latch().tankFull()).isEqualTo(Signal.ON);
    }

    @Test
    void aLineHeldByAnotherProgramIsTriedAgainNowAndThen() {
        lines.heldElsewhere.add(24);
        PiSensors sensors = contacts();
        sensors.readOnce();
        int askedOnce = lines.asked;
        sensors.readOnce();
        assertThat(lines.asked).as("not at every look").isEqualTo(askedOnce);
        assertThat(sensors.latch().tankFull()).isEqualTo(Signal.LOST);
        lines.heldElsewhere.clear();
        passS(HeldLine.AGAIN_S);
        sensors.readOnce();
        assertThat(sensors.latch().tankFull()).isEqualTo(Signal.OFF);
    }

    @Test
    void whatIsFittedAndNotAttachedIsLostAndWhatIsNotFittedIsNot() {
        PiSensors sensors = sensors(site(new Meter.NotAttached(), new Contact.NotAttached(), new Contact.NotFitted()));
        assertThat(sensors.latch().tankFull()).isEqualTo(Signal.LOST);
        assertThat(sensors.latch().doorOpen()).isEqualTo(Signal.NOT_FITTED);
        assertThat(sensors.latch().powersW()).containsExactly(Reading.NO_ANSWER, Reading.NOT_FITTED);
    }

    @Test
    void linesAreLetGoAtTheEnd() {
        PiSensors sensors = contacts();
        sensors.readOnce();
        assertThat(lines.taken).containsExactlyInAnyOrder(24, 25);
        sensors.close();
        assertThat(lines.taken).isEmpty();
    }

    @Test
    void anAuxiliaryContactCountsAsRatedPowerOrNone() {
        lines.high.put(23, false);
        PiSensors sensors = meter(new Meter.Running(METER));
        sensors.readOnce();
        assertThat(power(sensors)).isEqualTo(new Reading.Value(900, 0));
        lines.high.put(23, true);
        settle(sensors);
        assertThat(power(sensors)).isEqualTo(new Reading.Value(0, 0));
        passS(ContactCell.GRACE_S + 1);
        assertThat(power(sensors)).as("nobody has read it").isEqualTo(Reading.NO_ANSWER);
    }

    @Test
    void anOptoCouplerThatPassesTheMainsOwnPulsesIsOnUntilTheyEnd() {
        boolean[] running = {true};
        int[] kept = {16};
        TakenLine pulsing = new TakenLine() {
            @Override
            public boolean isHigh() {
                return true; // active low: always looked at between two pulses
            }

            @Override
            public OptionalLong nextEdgeNs(long waitMs) {
                boolean comes = waitMs == 0 ? kept[0]-- > 0 : running[0] && waitMs >= 20;
                return comes ? OptionalLong.of(nowNs) : OptionalLong.empty();
            }

            @Override
            public void close() {}
        };
        Site site = site(new Meter.Running(METER), new Contact.NotFitted(), new Contact.NotFitted());
        PiSensors sensors = sensors(site, (what, at, edges) -> pulsing);
        for (int i = 0; i < 8; i++) {
            kept[0] = 16; // a period of 50 Hz has many between two looks
            sensors.readOnce();
            assertThat(power(sensors)).isEqualTo(new Reading.Value(900, 0));
            passS(0.25);
        }
        running[0] = false;
        kept[0] = 16; // those before the end are no sign of now
        settle(sensors);
        assertThat(power(sensors)).isEqualTo(new Reading.Value(0, 0));
    }

    @Test
    void pulsesBecomePowerAndBounceDoesNot() {
        PiSensors sensors = pulses();
        for (int i = 1; i <= 3; i++) {
            passS(4);
            lines.edgesNs.add(nowNs);
            lines.edgesNs.add(nowNs + 4_000_000); // less than 5 ms of bounce, IEC 62053-31, 4.1.3.4
            nowNs += 5_000_000;
            sensors.readOnce();
        }
        assertThat(((Reading.Value) power(sensors)).value()).isCloseTo(900, within(2.0));
    }

    @Test
    void edgesStampedWithAnotherClockAreTakenForNow() {
        PiSensors sensors = pulses();
        for (int i = 1; i <= 3; i++) {
            passS(4);
            lines.edgesNs.add(1_764_000_000_000_000_000L + nowNs);
            sensors.readOnce();
        }
        assertThat(power(sensors)).isEqualTo(new Reading.Value(900, 0));
    }

    @Test
    void afterALineWasLostCountingBeginsAnew() {
        PiSensors sensors = pulses();
        for (int i = 1; i <= 3; i++) {
            passS(4);
            lines.edgesNs.add(nowNs);
            sensors.readOnce();
        }
        lines.broken.add(23);
        sensors.readOnce();
        assertThat(power(sensors)).isEqualTo(Reading.NO_ANSWER);
        lines.broken.clear();
        passS(60);
        sensors.readOnce();
        assertThat(power(sensors))
                .as("pulses were missed: not known to be little")
                .isEqualTo(Reading.NO_ANSWER);
        passS(4);
        lines.edgesNs.add(nowNs - 3_900_000_000L);
        lines.edgesNs.add(nowNs);
        sensors.readOnce();
        assertThat(((Reading.Value) power(sensors)).value()).isCloseTo(3600 / 3.9, within(1e-6));
    }

    @Test
    void aMeterThatHangsHoldsUpNoTickAndItsPowerIsNotKnown() {
        CountDownLatch never = new CountDownLatch(1);
        CountDownLatch hangs = new CountDownLatch(1);
        TakenLine hanging = new TakenLine() {
            @Override
            public boolean isHigh() {
                return false;
            }

            @Override
            public OptionalLong nextEdgeNs(long waitMs) {
                hangs.countDown();
                try {
                    never.await();
                } catch (InterruptedException e) {
                    Thread.currentThread().interrupt();
                }
                return OptionalLong.empty();
            }

            @Override
            public void close() {}
        };
        Site site = site(new Meter.Pulses(METER, 1000), new Contact.OnLine(FLOAT), new Contact.NotFitted());
        try (PiSensors sensors = sensors(site, (what, at, edges) -> edges ? hanging : lines.take(what, at, false))) {
            sensors.start();
            await().until(() -> hangs.getCount() == 0 && sensors.latch().tankFull() == Signal.OFF);
            passS(6);
            assertThat(power(sensors)).isEqualTo(Reading.NO_ANSWER);
        } finally {
            never.countDown();
        }
    }

    @Test
    void theKernelsCounter() {
        Sysfs sysfs = counter(4_294_967_290L); // about to pass the end of its 32 bits
        PiSensors sensors = meter(COUNTER);
        sensors.readOnce();
        for (long count = 1; count <= 12; count++) {
            passS(4);
            sysfs.put(COUNTER_FOLDER + "count0/count", (4_294_967_290L + count) % 4_294_967_296L + "\n");
            sensors.readOnce();
        }
        assertThat(power(sensors)).isEqualTo(new Reading.Value(900, 0));
        sysfs.put(COUNTER_FOLDER + "count0/count", "0\n"); // its driver was loaded anew
        sensors.readOnce();
        assertThat(power(sensors)).isEqualTo(Reading.NO_ANSWER);
    }

    @Test
    void aCounterThatIsSwitchedOffOrAbsentIsNotZeroPower() {
        PiSensors sensors = meter(COUNTER);
        sensors.readOnce();
        passS(60);
        assertThat(power(sensors)).isEqualTo(Reading.NO_ANSWER);
        counter(0).put(COUNTER_FOLDER + "count0/enable", "0\n");
        sensors.readOnce();
        passS(60);
        sensors.readOnce();
        assertThat(power(sensors)).isEqualTo(Reading.NO_ANSWER);
    }

    @Test
    void powerChipsOfHwmonByNameAndByPlace() {
        Sysfs sysfs = new Sysfs(root)
                .put("sys/class/hwmon/hwmon0/name", "cpu_thermal\n")
                .put("sys/class/hwmon/hwmon3/name", "ina226\n")
                .put("sys/class/hwmon/hwmon3/power1_input", "3125000000\n"); // microwatts, more than 32 bits hold
        Meter.PowerFile byName = new Meter.PowerFile(Meter.Driver.HWMON, "ina226", 1);
        assertThat(new PowerFileProbe(root, byName).read()).isEqualTo(new Reading.Value(3125, 0));
        sysfs.put("sys/class/hwmon/hwmon4/name", "ina226\n").put("sys/class/hwmon/hwmon4/power1_input", "0\n");
        assertThat(new PowerFileProbe(root, byName).read()).as("which of two?").isEqualTo(Reading.NO_ANSWER);
        sysfs.put("sys/bus/i2c/devices/1-0041/hwmon/hwmon4/power1_input", "24500000\n");
        assertThat(new PowerFileProbe(root, new Meter.PowerFile(Meter.Driver.HWMON, "1-0041", 1)).read())
                .isEqualTo(new Reading.Value(24.5, 0));
    }

    @Test
    void powerChipsOfIndustrialIo() {
        String chip = "sys/bus/iio/devices/iio:device0/";
        Sysfs sysfs = new Sysfs(root)
                .put(chip + "name", "ina226\n")
                .put(chip + "in_power2_raw", "106\n")
                .put(chip + "in_power2_scale", "12.500000000\n");
        PowerFileProbe probe = new PowerFileProbe(root, new Meter.PowerFile(Meter.Driver.IIO, "ina226", 2));
        assertThat(probe.read()).as("milliwatts").isEqualTo(new Reading.Value(1.325, 0));
        sysfs.put(chip + "in_power2_raw", "\n");
        assertThat(probe.read()).isEqualTo(Reading.NO_ANSWER);
        sysfs.put(chip + "in_power2_raw", "x\n");
        assertThat(probe.read()).isEqualTo(new Reading.Lost(Loss.FAULT_VALUE));
    }

    @Test
    void aPowerChipsReadingAgesAndIsLost() {
        new Sysfs(root)
                .put("sys/class/hwmon/hwmon3/name", "ina226")
                .put("sys/class/hwmon/hwmon3/power1_input", "5000000");
        PiSensors sensors = meter(new Meter.PowerFile(Meter.Driver.HWMON, "ina226", 1));
        sensors.readOnce();
        passS(2);
        assertThat(power(sensors)).isEqualTo(new Reading.Value(5, 2));
        new Sysfs(root).remove("sys/class/hwmon/hwmon3/power1_input");
        sensors.readOnce();
        passS(Cell.GRACE_S);
        assertThat(power(sensors)).isEqualTo(Reading.NO_ANSWER);
    }

    // ---- the stand

    private void passS(double seconds) {
        nowNs += (long) (seconds * 1e9);
    }

    /** Looks until a change counts. */
    private void settle(PiSensors sensors) {
        sensors.readOnce();
        passS(ContactCell.SETTLE_S);
        sensors.readOnce();
    }

    private Sysfs counter(long count) {
        return new Sysfs(root)
                .put(COUNTER_FOLDER + "name", "counter-0\n")
                .put(COUNTER_FOLDER + "count0/enable", "1\n")
                .put(COUNTER_FOLDER + "count0/count", count + "\n");
    }

    private PiSensors contacts() {
        return sensors(site(new Meter.NotFitted(), new Contact.OnLine(FLOAT), new Contact.OnLine(DOOR)));
    }

    private PiSensors pulses() {
        PiSensors sensors = meter(new Meter.Pulses(METER, 1000));
        sensors.readOnce();
        return sensors;
    }

    private PiSensors meter(Meter meter) {
        return sensors(site(meter, new Contact.NotFitted(), new Contact.NotFitted()));
    }

    private static Reading power(PiSensors sensors) {
        return sensors.latch().powersW().get(0);
    }

    private PiSensors sensors(Site site) {
        return sensors(site, lines);
    }

    private PiSensors sensors(Site site, InputTaker taker) {
        return new PiSensors(
                site,
                root,
                () -> nowNs,
                bus -> {
                    throw new AssertionError("no I2C here");
                },
                taker);
    }

    /** One stage of 900 W with this meter, a dryer without. */
    private static Site site(Meter meter, Contact tankFloat, Contact door) {
        Machine stage = new Machine("stage", Role.HEATER_STAGE, 900, 60, 60, 12, meter, new Wiring.NotWired());
        Machine dryer = new Machine("dryer", Role.DRYER, 600, 300, 300, 4, false, new Wiring.NotWired());
        Site plain = Sites.of(
                new Heater(List.of(stage), 120),
                new Drying.Dryer(dryer, DryerKind.SORPTION, 40, 120, 1, 0.5, 10, tankFloat),
                new Venting.NoVentFan(),
                new Circuit(230, 13, 1, 0, 10));
        return new Site(
                plain.id(),
                plain.name(),
                plain.zone(),
                plain.plants(),
                plain.targets(),
                plain.tunnel(),
                plain.sensors(),
                plain.heater(),
                plain.drying(),
                plain.venting(),
                plain.circuit(),
                plain.tariff(),
                door);
    }
}
