package rimeward.sim.sweep;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import rimeward.sim.device.SensorVices;
import rimeward.sim.fault.Fault;
import rimeward.sim.fault.FaultPlan;
import rimeward.sim.scenario.BadInput;
import rimeward.sim.scenario.Scenario;
import rimeward.sim.scenario.StandDownAt;

/**
 * Makes a winter that breaks a property smaller while it still does, greedily: an earlier end, fewer faults and orders, a later start,
 * usual sensors. Each try is written and read as a replay would.
 */
final class Shrink {
    private static final long HOUR_S = 3600;
    private static final List<Long> BEFORE_S =
            List.of(HOUR_S, 2 * HOUR_S, 4 * HOUR_S, 8 * HOUR_S, 16 * HOUR_S, 32 * HOUR_S, 64 * HOUR_S);
    private static final long AFTER_S = 900;
    private static final long DAY_S = 86_400;
    private static final long MORNING_S = 8 * HOUR_S;

    private final WinterRun.Set winter;
    private final String code;
    private final Path scratch;

    Shrink(WinterRun.Set winter, String code, Path scratch) {
        this.winter = winter;
        this.code = code;
        this.scratch = scratch;
    }

    /** The scenario's file. */
    Path into(Path folder) throws BadInput {
        Scenario least = winter.scenario();
        if (broken(least).isPresent()) { // a second run that differs, say, cannot be shrunk
            least = withEnd(least);
            least = withFewerFaults(least);
            least = withFewerOrders(least);
            least = withLaterStart(least);
            least = withUsualSensors(least);
        }
        return ScenarioText.write(least, winter.place(), folder);
    }

    /** Soon after; or else the morning after, when no forecast counts: one of a night that is cut off is another forecast. */
    private Scenario withEnd(Scenario is) throws BadInput {
        long firstS =
                broken(is).map(found -> found.firstEpochS() - is.startEpochS()).orElse(is.lengthS());
        long morningS = DAY_S - Math.floorMod(is.startEpochS() + firstS - MORNING_S, DAY_S);
        for (long afterS : List.of(AFTER_S, AFTER_S + morningS)) {
            long untilS = Math.min(is.lengthS(), (firstS + afterS) / is.tickS() * is.tickS());
            Scenario shorter = is.during(0, untilS);
            if (broken(shorter).isPresent()) {
                return shorter;
            }
        }
        return is;
    }

    private Scenario withFewerFaults(Scenario is) throws BadInput {
        Scenario least = is;
        for (Fault fault : is.faults().faults()) {
            List<Fault> fewer = new ArrayList<>(least.faults().faults());
            fewer.remove(fault);
            least = either(least.with(new FaultPlan(fewer), least.orders()), least);
        }
        return least;
    }

    private Scenario withFewerOrders(Scenario is) throws BadInput {
        Scenario least = is;
        for (StandDownAt order : is.orders()) {
            List<StandDownAt> fewer = new ArrayList<>(least.orders());
            fewer.remove(order);
            least = either(least.with(least.faults(), fewer), least);
        }
        return least;
    }

    /** Weather files go by hours, so the start does too. */
    private Scenario withLaterStart(Scenario is) throws BadInput {
        for (long beforeS : BEFORE_S) {
            long fromS = (is.lengthS() - beforeS) / HOUR_S * HOUR_S;
            if (fromS > 0) {
                Scenario later = is.during(fromS, is.lengthS());
                if (broken(later).isPresent()) {
                    return later;
                }
            }
        }
        return is;
    }

    private Scenario withUsualSensors(Scenario is) throws BadInput {
        int count = is.sensors().size();
        Scenario truthful = either(is.with(Collections.nCopies(count, SensorVices.usual())), is);
        return either(truthful.with(Collections.nCopies(count, SensorVices.none())), truthful);
    }

    private Scenario either(Scenario smaller, Scenario otherwise) throws BadInput {
        return broken(smaller).isPresent() ? smaller : otherwise;
    }

    /** How the property is broken there, if it is. */
    private Optional<Broken> broken(Scenario tried) throws BadInput {
        Scenario read = ScenarioText.asRead(tried, winter.place(), scratch.resolve("shrinking-" + tried.seed()));
        return WinterRun.ours(read).broken().stream()
                .filter(found -> found.code().equals(code))
                .findFirst();
    }
}
