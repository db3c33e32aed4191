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
import rimeward.core.tunnel.Stretch;
import rimeward.core.watch.Delivery;
import rimeward.fixture.Sites;
import rimeward.site.RelaySet;
import rimeward.site.Site;

class StretchesTest {
    /** 2026-12-01T12:07Z. */
    private static final long START_S = 1_796_126_820;

    private final Site site = Sites.unmetered();
    private final Stretches stretches = new Stretches(site);
    private long atS = START_S;
    private boolean clockSet = true;
    private Verdict first = Verdict.TRUSTED;
    private Signal door = Signal.OFF;
    private RelaySet closed = RelaySet.none();

    private void minutes(int count) {
        for (int i = 0; i < count; i++) {
            atS += 60;
            stretches.add(row());
        }
    }

    private FrameRow row() {
        List<SensorReading> readings = new ArrayList<>();
        List<Verdict> verdicts = new ArrayList<>();
        for (int i = 0; i < site.sensors().size(); i++) {
            double airC = site.sensors().get(i).place().isInside() ? 6 + i : -3;
            readings.add(new SensorReading(new Reading.Value(airC, 0), Reading.NO_ANSWER));
            verdicts.add(i == 0 ? first : Verdict.TRUSTED);
        }
        int machines = site.machines().size();
        Senses senses = new Senses(readings, Collections.nCopies(machines, Reading.NO_ANSWER), Signal.OFF, door);
        return new FrameRow(
                new Frame(new Tick(atS, atS * 1000, new WallTime(atS * 1000, clockSet)), senses),
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
    void beginsWithAQuarterAndHoldsWhatCameInDuringEach() {
        minutes(60);
        closed = RelaySet.of(1);
        minutes(10);
        closed = RelaySet.none();
        minutes(60);
        Stretch found = stretches.found().get(0);
        assertThat(found.startEpochS() % Stretch.QUARTER_S).isZero();
        assertThat(found.quarters()).hasSize(8).allMatch(Stretch.Quarter::shut);
        assertThat(found.quarters()).allSatisfy(quarter -> {
            assertThat(quarter.airC()).isCloseTo(insideMeanC(), within(1e-9));
            assertThat(quarter.outsideC()).isCloseTo(-3, within(1e-9));
        });
        double heaterJ = found.quarters().stream()
                .flatMap(quarter -> quarter.heaterW().stream())
                .mapToDouble(powerW -> powerW * 60)
                .sum();
        assertThat(heaterJ).isCloseTo(600 * site.machines().get(0).ratedW(), within(1e-6));
    }

    private double insideMeanC() {
        return site.sensors().stream()
                .filter(sensor -> sensor.place().isInside())
                .mapToInt(sensor -> 6 + site.sensors().indexOf(sensor))
                .average()
                .orElseThrow();
    }

    @Test
    void aHoleAnUnsetClockAndALostSensorEachEndAStretch() {
        minutes(60);
        atS += 600;
        minutes(60);
        clockSet = false;
        minutes(5);
        clockSet = true;
        minutes(60);
        first = Verdict.LOST;
        minutes(60);
        assertThat(stretches.found()).hasSize(4);
    }

    @Test
    void knowsTheDarkByTheClockAndTheDoorByItsContact() {
        minutes(4 * 60);
        door = Signal.ON;
        minutes(60);
        door = Signal.OFF;
        minutes(19 * 60);
        List<Stretch.Quarter> all = stretches.found().get(0).quarters();
        assertThat(all.stream().filter(Stretch.Quarter::dark).count()).isEqualTo(48);
        assertThat(all.stream().filter(quarter -> !quarter.shut()).count()).isBetween(4L, 5L);
    }
}
