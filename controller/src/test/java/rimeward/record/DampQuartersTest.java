package rimeward.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import rimeward.core.guard.Holder;
import rimeward.core.judgement.Trust;
import rimeward.core.judgement.Verdict;
import rimeward.core.outlook.Outlook;
import rimeward.core.reading.Frame;
import rimeward.core.reading.Reading;
import rimeward.core.reading.Senses;
import rimeward.core.reading.SensorReading;
import rimeward.core.reading.Signal;
import rimeward.core.reading.Tick;
import rimeward.core.reading.WallTime;
import rimeward.core.tunnel.DampQuarter;
import rimeward.core.watch.Delivery;
import rimeward.fixture.Sites;
import rimeward.site.RelaySet;
import rimeward.site.Site;

class DampQuartersTest {
    /** 2026-12-01T20:00Z: dark. */
    private static final long START_S = 1_796_155_200;

    private final Site site = Sites.unmetered();
    private final DampQuarters quarters = new DampQuarters(site);
    private long atS = START_S;
    private boolean outsideKnown = true;
    private Verdict verdict = Verdict.TRUSTED;
    private Signal door = Signal.OFF;
    private RelaySet closed = RelaySet.none();

    private void minutes(int count) {
        for (int i = 0; i < count; i++) {
            quarters.add(row());
            atS += 60;
        }
    }

    private FrameRow row() {
        List<SensorReading> readings = new ArrayList<>();
        for (int i = 0; i < site.sensors().size(); i++) {
            boolean inside = site.sensors().get(i).place().isInside();
            Reading rh = inside || outsideKnown ? new Reading.Value(80, 0) : Reading.NO_ANSWER;
            readings.add(new SensorReading(new Reading.Value(inside ? 6 : 0, 0), rh));
        }
        int machines = site.machines().size();
        List<Verdict> verdicts = Collections.nCopies(site.sensors().size(), verdict);
        Senses senses = new Senses(readings, Collections.nCopies(machines, Reading.NO_ANSWER), Signal.OFF, door);
        return new FrameRow(
                new Frame(new Tick(atS, atS * 1000, new WallTime(atS * 1000, true)), senses),
                false,
                0,
                Trust.FULL,
                Holder.NOT_NEEDED,
                closed,
                closed,
                RelaySet.none(),
                List.of(),
                verdicts,
                verdicts,
                Collections.nCopies(machines, Delivery.OFF),
                Outlook.NONE);
    }

    @Test
    void aQuarterHasItsDampInsideAndOutside() {
        minutes(16);
        DampQuarter first = quarters.found().get(0);
        assertThat(first.epochS()).isEqualTo(START_S);
        assertThat(first.humidityKgPerKg()).isCloseTo(0.0047, within(0.0002));
        assertThat(first.outsideKgPerKg()).isCloseTo(0.0031, within(0.0002));
        assertThat(first.dryerShare()).isZero();
        assertThat(first.dark()).isTrue();
        assertThat(first.shut()).isTrue();
    }

    @Test
    void theDryersShareAndAnOpenDoorAreSeen() {
        closed = RelaySet.of(1 << Sites.DRYER);
        door = Signal.ON;
        minutes(16);
        assertThat(quarters.found().get(0).dryerShare()).isCloseTo(1, within(1e-9));
        assertThat(quarters.found().get(0).shut()).isFalse();
    }

    @Test
    void withoutTheHumidityOutsideThereIsNothing() {
        outsideKnown = false;
        minutes(40);
        assertThat(quarters.found()).isEmpty();
    }

    @Test
    void whatIsDoubtedDoesNotCount() {
        verdict = Verdict.FROZEN;
        minutes(40);
        assertThat(quarters.found()).isEmpty();
    }

    @Test
    void aQuarterWithALongHoleIsLeftOut() {
        minutes(5);
        atS += 420;
        minutes(20);
        assertThat(quarters.found()).extracting(DampQuarter::epochS).containsExactly(START_S + 900);
    }
}
