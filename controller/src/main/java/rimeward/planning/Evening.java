package rimeward.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rimeward.core.outlook.OutsideAir;
import rimeward.core.outlook.PlanChoices;
import rimeward.core.outlook.PlanStart;
import rimeward.core.reading.Signal;
import rimeward.core.watch.Delivery;
import rimeward.record.FrameRow;
import rimeward.site.RelaySet;
import rimeward.site.Site;

/**
 * The tunnel as a plan begins with it.
 *
 * @param site with the floor that was asked for
 * @param insideC mean of the believed inside readings, °C
 * @param rhPercent mean of the believed inside humidities, %
 * @param cornerK how much colder the coldest bench was than that mean, on average over a day, K
 * @param out machines that stand down or have failed
 * @param tankFull whether the dryer's float says so
 */
public record Evening(
        Site site,
        long epochS,
        OptionalDouble insideC,
        OutsideAir outside,
        OptionalDouble rhPercent,
        OptionalDouble cornerK,
        RelaySet out,
        boolean tankFull) {

    /**
     * By a frame, and the kept ones of the day before it.
     *
     * @param standDowns machines that are not to be counted on, beside those that failed
     */
    public static Evening of(List<FrameRow> day, FrameRow newest, Site site, RelaySet standDowns) {
        return new Evening(
                site,
                newest.frame().tick().wall().epochS(),
                mean(inside(newest, site)),
                Outside.of(newest, site),
                mean(humid(newest, site)),
                mean(day.stream()
                        .filter(row -> isOf(row, site))
                        .flatMap(row -> corner(inside(row, site)).stream())
                        .toList()),
                failed(newest).or(standDowns),
                newest.frame().senses().tankFull() == Signal.ON);
    }

    /** Whether a frame was taken with these sensors, at a known time of day. */
    public static boolean isOf(FrameRow row, Site site) {
        return row.frame().tick().wall().trusted()
                && row.frame().senses().sensors().size() == site.sensors().size();
    }

    /** Where the night starts from; empty where the air inside is not known. */
    Optional<PlanStart> start() {
        return insideC.isEmpty()
                ? Optional.empty()
                : Optional.of(new PlanStart(
                        epochS,
                        insideC.getAsDouble(),
                        OptionalDouble.empty(),
                        rhPercent,
                        tankFull ? OptionalDouble.of(0) : OptionalDouble.empty()));
    }

    PlanChoices choices() {
        PlanChoices usual = PlanChoices.usual(site).without(out);
        return cornerK.isPresent() ? usual.withCorner(cornerK.getAsDouble()) : usual;
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
}
