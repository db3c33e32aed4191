package rimeward.app;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rimeward.adapter.journal.RecordFile;
import rimeward.core.order.FloorOrder;
import rimeward.core.outlook.Outlook;
import rimeward.core.reading.Signal;
import rimeward.core.reading.WallTime;
import rimeward.core.watch.Delivery;
import rimeward.record.DamagedState;
import rimeward.record.FrameRow;
import rimeward.record.SavedState;
import rimeward.service.Restart;
import rimeward.site.RelaySet;
import rimeward.site.Site;

/**
 * The tunnel as its record last saw it.
 *
 * @param site with the floor that was asked for
 * @param insideC mean of the believed inside readings, °C
 * @param rhPercent mean of the believed inside humidities, %
 * @param cornerK how much colder the coldest bench was than that mean, on average over a day, K
 * @param out machines that stand down or have failed
 * @param tankFull whether the dryer's float says so
 */
record Evening(
        Site site,
        long epochS,
        OptionalDouble insideC,
        OptionalDouble outsideC,
        OptionalDouble rhPercent,
        OptionalDouble cornerK,
        RelaySet out,
        boolean tankFull,
        Outlook outlook) {
    /** An older frame says nothing of now, s. Own choice. */
    private static final long STALE_S = 3600;

    private static final long DAY_S = 86_400;

    /** Empty where the record has no frame of the last hour. */
    static Optional<Evening> of(Path record, Site settings, long nowS) {
        List<FrameRow> day = RecordFile.framesSince(record, (nowS - DAY_S) * 1000).stream()
                .filter(row -> row.frame().tick().wall().trusted() && epochS(row) <= nowS)
                .filter(row -> row.frame().senses().sensors().size()
                        == settings.sensors().size())
                .toList();
        if (day.isEmpty() || epochS(day.get(day.size() - 1)) < nowS - STALE_S) {
            return Optional.empty();
        }
        FrameRow newest = day.get(day.size() - 1);
        Optional<SavedState> saved = saved(record);
        Site site = saved.map(state -> Restart.standing(state, settings, new WallTime(nowS * 1000, true))
                        .floor())
                .flatMap(floor -> floor instanceof FloorOrder.Asked asked
                        ? Optional.of(settings.withFloor(asked.floorC()))
                        : Optional.empty())
                .orElse(settings);
        return Optional.of(new Evening(
                site,
                epochS(newest),
                mean(inside(newest, site)),
                outside(newest, site),
                mean(humid(newest, site)),
                mean(day.stream()
                        .flatMap(row -> corner(inside(row, site)).stream())
                        .toList()),
                failed(newest).or(saved.map(state -> standDowns(state, site)).orElse(RelaySet.none())),
                newest.frame().senses().tankFull() == Signal.ON,
                newest.outlook()));
    }

    private static Optional<SavedState> saved(Path record) {
        try {
            return RecordFile.state(record).map(SavedState::parse);
        } catch (DamagedState e) {
            return Optional.empty(); // the service says so at its next start
        }
    }

    private static long epochS(FrameRow row) {
        return row.frame().tick().wall().epochS();
    }

    private static List<Double> inside(FrameRow row, Site site) {
        List<Double> believed = new ArrayList<>();
        for (int i = 0; i < site.sensors().size(); i++) {
            if (site.sensors().get(i).place().isInside()) {
                row.believedAirC(i).ifPresent(believed::add);
            }
        }
        return believed;
    }

    private static List<Double> humid(FrameRow row, Site site) {
        List<Double> believed = new ArrayList<>();
        for (int i = 0; i < site.sensors().size(); i++) {
            if (site.sensors().get(i).place().isInside()) {
                row.believedRhPercent(i).ifPresent(percent -> believed.add(Math.min(100, percent)));
            }
        }
        return believed;
    }

    private static OptionalDouble outside(FrameRow row, Site site) {
        for (int i = 0; i < site.sensors().size(); i++) {
            if (!site.sensors().get(i).place().isInside() && row.believedAirC(i).isPresent()) {
                return row.believedAirC(i);
            }
        }
        return OptionalDouble.empty();
    }

    private static Optional<Double> corner(List<Double> benchesC) {
        return benchesC.size() < 2
                ? Optional.empty()
                : Optional.of(mean(benchesC).orElse(0)
                        - benchesC.stream()
                                .mapToDouble(Double::doubleValue)
                                .min()
                                .orElse(0));
    }

    private static OptionalDouble mean(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).average();
    }

    private static RelaySet failed(FrameRow row) {
        RelaySet failed = RelaySet.none();
        for (int i = 0; i < row.deliveries().size(); i++) {
            failed = row.deliveries().get(i) == Delivery.NOT_GIVING ? failed.with(i) : failed;
        }
        return failed;
    }

    private static RelaySet standDowns(SavedState state, Site site) {
        boolean sameMachines = state.machines().equals(site.machineIds());
        return sameMachines
                ? state.guard().standDowns().machines().or(state.failures().failed())
                : RelaySet.none();
    }
}
