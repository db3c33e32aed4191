package rimeward.adapter.pi;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rimeward.core.reading.Reading;
import rimeward.core.tunnel.TunnelModel;
import rimeward.core.watch.Delivery;
import rimeward.core.watch.EffectWatch;
import rimeward.core.watch.WatchState;
import rimeward.core.watch.Watched;
import rimeward.fixture.Beliefs;
import rimeward.fixture.Sites;
import rimeward.site.Meter;
import rimeward.site.RelaySet;
import rimeward.site.Site;

/** What control makes of the coarsest pulse meter that settings let pass: a stage of 1000 W, a tick every 5 s. */
class PulsesInControlTest {
    private static final double RATED_W = 1000;
    private static final double PULSE_J = 3.6e6 / Meter.fewestPulsesPerKWh(RATED_W);
    private static final double BEAT_S = 5;
    private static final RelaySet ON = RelaySet.of(1 << Sites.STAGE_1);

    private final Site site = Sites.metered();
    private final EffectWatch watch = new EffectWatch(site);
    private final PulsePower power = new PulsePower("the meter", Meter.fewestPulsesPerKWh(RATED_W));
    private WatchState state = WatchState.start(site);
    private double passedJ;
    private double nowS;

    /** Half of what the plate says is the least that is promised to be told right. */
    @ParameterizedTest
    @ValueSource(doubles = {510, 800, 1000, 1100})
    void aStageThatWorksIsNeverTakenForADeadOneNorAfterItsEndForAWeldedOne(double drawnW) {
        SplittableRandom random = new SplittableRandom(21);
        begin();
        for (int i = 0; i < 200; i++) {
            run(ON, drawnW, 60 + random.nextInt(10) * BEAT_S, Delivery.STARTING, Delivery.GIVING);
            run(RelaySet.none(), 0, 60 + random.nextInt(200) * BEAT_S, Delivery.OFF);
            passedJ = random.nextDouble(PULSE_J); // where between two pulses it stands, differs each time
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 7, 60, 600})
    void aFuseThatBlowsIsSeenWithinHalfAMinute(int afterS) {
        begin();
        run(ON, RATED_W, 60 + afterS, Delivery.STARTING, Delivery.GIVING);
        run(ON, 0, 25, Delivery.GIVING, Delivery.NOT_GIVING);
        run(ON, 0, 3600, Delivery.NOT_GIVING);
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 3, 100})
    void aStageThatNeverStartsIsSeenOnceControlLooks(int afterS) {
        begin();
        run(RelaySet.none(), 0, 60 + afterS, Delivery.OFF);
        run(ON, 0, 15, Delivery.STARTING);
        run(ON, 0, 600, Delivery.STARTING, Delivery.NOT_GIVING);
        run(ON, 0, 5, Delivery.NOT_GIVING);
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 3, 100})
    void aWeldedRelayIsSeen(int afterS) {
        begin();
        run(ON, RATED_W, 60 + afterS, Delivery.STARTING, Delivery.GIVING);
        run(RelaySet.none(), RATED_W, 15, Delivery.OFF);
        run(RelaySet.none(), RATED_W, 600, Delivery.OFF, Delivery.STUCK_ON);
        run(RelaySet.none(), RATED_W, 5, Delivery.STUCK_ON);
    }

    private void begin() {
        power.begin(0);
        run(RelaySet.none(), 0, 60, Delivery.OFF);
    }

    /** Ticks with this drawn; at each, control must think one of these. */
    private void run(RelaySet closed, double drawnW, double seconds, Delivery... allowed) {
        for (double s = 0; s < seconds; s += BEAT_S) {
            pass(drawnW);
            List<Reading> metersW = new ArrayList<>();
            for (int i = 0; i < site.machines().size(); i++) {
                metersW.add(i == Sites.STAGE_1 ? power.latch(ns(nowS)) : new Reading.Value(0, 0));
            }
            Watched now = watch.watch(state, Beliefs.calm(8), metersW, closed, TunnelModel.assumed(site), BEAT_S);
            state = now.next();
            assertThat(now.deliveries().of(Sites.STAGE_1)).as("at %s s", nowS).isIn((Object[]) allowed);
        }
    }

    /** Five seconds of the meter's life: a pulse whenever its energy is full. */
    private void pass(double drawnW) {
        double endS = nowS + BEAT_S;
        while (drawnW > 0 && nowS + (PULSE_J - passedJ) / drawnW <= endS) {
            nowS += (PULSE_J - passedJ) / drawnW;
            passedJ = 0;
            power.pulses(1, ns(nowS));
        }
        passedJ += drawnW * (endS - nowS);
        nowS = endS;
        power.asked(ns(nowS));
    }

    private static long ns(double seconds) {
        return Math.round(seconds * 1e9);
    }
}
