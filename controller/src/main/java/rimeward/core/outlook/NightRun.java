package rimeward.core.outlook;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import rimeward.air.MoistAir;
import rimeward.air.RelativeHumidity;
import rimeward.air.Saturation;
import rimeward.core.outlook.NightLaw.Sight;
import rimeward.core.outlook.NightLaw.Wish;
import rimeward.site.Drying;
import rimeward.site.Site;

/** One night through, in one world under one law, step by step. The sun is left out: by day it is warmer and cheaper than this. */
final class NightRun {
    /** A dryer is rated at 10 °C and 80 %; it is taken to collect in proportion to the humidity ratio. Own choice. */
    private static final double RATED_C = 10;

    private static final double RATED_PERCENT = 80;

    /** In air drier than the first a dryer's own humidistat has stopped it, damper than the second it has not. Common practice, no source. */
    private static final double IDLE_PERCENT = 45;

    private static final double SURE_PERCENT = 60;
    private static final double J_PER_KWH = 3.6e6;

    private final Tonight night;
    private final Site site;
    private final World world;
    private final NightLaw law;
    private final Machinery machinery;
    private final double cornerK;
    private final TunnelAir air;
    private final TunnelAir free;
    private final List<Moment> moments = new ArrayList<>();
    private double tankLeftL;

    /**
     * One step of it.
     *
     * @param freeC coldest bench with every machine off since the start, °C
     * @param benchC coldest bench as its sensor would read, °C
     * @param rhPercent relative humidity there, %
     * @param heaterW electricity of the heater on average, W
     * @param dryerShare part of the time that the dryer runs, 0 to 1
     * @param spareW heat that could be given beyond what holds the floor, W; negative where the floor cannot be held
     * @param drierKgPerKg how much drier outside is than inside, kg/kg
     * @param lossW heat that goes to outside, W
     */
    record Moment(
            double outsideC,
            double freeC,
            double airC,
            double massC,
            double benchC,
            double rhPercent,
            double heaterW,
            double dryerShare,
            double kWh,
            double cost,
            double litres,
            double spareW,
            double drierKgPerKg,
            double lossW,
            boolean tankFull) {}

    private NightRun(Tonight night, World world, NightLaw law) {
        this.night = night;
        this.world = world;
        this.law = law;
        site = night.site();
        machinery = Machinery.of(site, night.choices().out());
        cornerK = night.choices().coldCornerK() + world.cornerShiftK();
        air = startAir();
        free = startAir();
        tankLeftL = night.start().tankLeftL().orElse(tankL());
    }

    static NightRun of(Tonight night, World world, NightLaw.Maker law) {
        NightRun run = new NightRun(night, world, law.make(world));
        for (int step = 0; step < night.steps(); step++) {
            run.step(step);
        }
        return run;
    }

    List<Moment> moments() {
        return moments;
    }

    Machinery machinery() {
        return machinery;
    }

    private double tankL() {
        return machinery.drying() instanceof Drying.Dryer dryer ? dryer.tankL() : Double.POSITIVE_INFINITY;
    }

    private TunnelAir startAir() {
        PlanStart start = night.start();
        double massC = start.massC().orElse(start.airC()) + world.massShiftK();
        TunnelAir made =
                new TunnelAir(world, site.tunnel().volumeM3(), night.pressurePa(), Tonight.STEP_S, start.airC(), massC);
        start.rhPercent().ifPresentOrElse(made::setRh, () -> made.setDampInBalance(outsideKgPerKg(weather(0))));
        return made;
    }

    private Course.Step weather(int step) {
        Course.Step said = night.line().at(night.epochS(step) + Tonight.STEP_S / 2.0);
        double outsideC = said.airC() + world.outsideSpreads() * said.spreadK();
        return new Course.Step(said.epochS(), outsideC, said.spreadK(), StrictMath.min(outsideC, said.dewPointC()));
    }

    private double outsideKgPerKg(Course.Step weather) {
        return MoistAir.humidityRatioKgPerKg(Saturation.overWaterPa(weather.dewPointC()), night.pressurePa());
    }

    private void step(int step) {
        Course.Step weather = weather(step);
        double outsideC = weather.airC();
        double outsideKgPerKg = outsideKgPerKg(weather);
        double beforeC = air.airC() - cornerK;
        Wish wish = law.wish(new Sight(
                step,
                beforeC - night.choices().doubtK(),
                air.airC(),
                air.rhPercent(beforeC),
                air.dewPointC(),
                outsideC));
        boolean usable = dryerUsable(beforeC);
        boolean full = isTankFull();
        Given given = given(wish, usable, outsideC);
        double spareW = spareW(outsideC);
        double collectedKg = given.dryerShare * collectedKg();
        air.step(outsideC, outsideKgPerKg, given.heatW, collectedKg / Tonight.STEP_S);
        free.step(outsideC, outsideKgPerKg, 0, 0);
        tankLeftL -= collectedKg;
        double kWh = (given.heaterW + given.dryerShare * machinery.dryerW()) * Tonight.STEP_S / J_PER_KWH;
        double benchC = air.airC() - cornerK - (given.swings ? wish.swingK() : 0);
        moments.add(new Moment(
                outsideC,
                free.airC() - cornerK,
                air.airC(),
                air.massC(),
                benchC,
                air.rhPercent(air.airC() - cornerK),
                given.heaterW,
                given.dryerShare,
                kWh,
                kWh * night.pricePerKWh(step),
                collectedKg, // a litre weighs a kilogram
                spareW,
                air.humidityKgPerKg() - outsideKgPerKg,
                world.heatLossWPerK() * (air.airC() - outsideC),
                full));
    }

    /** Below its rated minimum it is locked out, and with a full tank it stops. */
    private boolean dryerUsable(double benchC) {
        return machinery.drying() instanceof Drying.Dryer dryer && benchC >= dryer.minimumAirC() && !isTankFull();
    }

    private boolean isTankFull() {
        return machinery.drying() instanceof Drying.Dryer && tankLeftL <= 0;
    }

    /** What the machines give in a step; {@code swings} while the heater goes on and off. */
    private record Given(double heaterW, double dryerShare, double heatW, boolean swings) {}

    private Given given(Wish wish, boolean usable, double outsideC) {
        double allW = air.heatToReachW(wish.holdAirC(), outsideC);
        double aloneW = heaterW(allW);
        boolean tooLittle = aloneW >= machinery.heaterW();
        double dryerShare = !usable ? 0 : wish.dryer() ? 1 : wish.dryerHelps() && tooLittle ? dryerCounts() : 0;
        double dryerHeatW = world.dryerYield() * machinery.dryerW() * dryerShare;
        double besideW = heaterW(allW - dryerHeatW);
        if (!machinery.carriesDryerBeside(besideW)) {
            return new Given(aloneW, 0, world.heaterYield() * aloneW, !tooLittle && aloneW > 0);
        }
        double heatW = world.heaterYield() * besideW + dryerHeatW;
        return new Given(besideW, dryerShare, heatW, besideW > 0 && besideW < machinery.heaterW());
    }

    private double heaterW(double heatW) {
        return StrictMath.max(0, StrictMath.min(machinery.heaterW(), heatW / world.heaterYield()));
    }

    /** Heat that could be given at most with the bench at the floor, less what holds it there. */
    private double spareW(double outsideC) {
        double dryerW = machinery.carriesDryerBeside(machinery.heaterW()) ? dryerCounts() * machinery.dryerW() : 0;
        double mostW = world.heaterYield() * machinery.heaterW() + world.dryerYield() * dryerW;
        return mostW - air.heatToHoldW(site.floorC() + cornerK, outsideC);
    }

    /**
     * How far the dryer can be counted on for warmth: its own humidistat, which nobody knows, may stop it in dry air. What counts is the
     * damp that it would find had it rested, so that a run of it does not speak against the next.
     */
    private double dryerCounts() {
        boolean works = machinery.drying() instanceof Drying.Dryer dryer
                && site.floorC() >= dryer.minimumAirC()
                && !isTankFull();
        double share = (air.undriedPercent(air.airC() - cornerK) - IDLE_PERCENT) / (SURE_PERCENT - IDLE_PERCENT);
        return works ? StrictMath.max(0, StrictMath.min(1, share)) : 0;
    }

    private double collectedKg() {
        if (!(machinery.drying() instanceof Drying.Dryer dryer)) {
            return 0;
        }
        double ratedKgPerKg = MoistAir.humidityRatioKgPerKg(
                RelativeHumidity.vapourFromOverWaterPa(RATED_C, RATED_PERCENT), night.pressurePa());
        double kgPerS = dryer.collectionLPerH() / 3600 * air.humidityKgPerKg() / ratedKgPerKg;
        return StrictMath.min(tankLeftL, kgPerS * Tonight.STEP_S);
    }

    /** Over the steps of one hour, or of the whole night. */
    double sum(int from, int to, ToDoubleFunction<Moment> what) {
        double sum = 0;
        for (Moment moment : moments.subList(from, to)) {
            sum += what.applyAsDouble(moment);
        }
        return sum;
    }

    double sum(ToDoubleFunction<Moment> what) {
        return sum(0, moments.size(), what);
    }

    double mean(int from, int to, ToDoubleFunction<Moment> what) {
        return sum(from, to, what) / (to - from);
    }

    double least(int from, int to, ToDoubleFunction<Moment> what) {
        double least = Double.POSITIVE_INFINITY;
        for (Moment moment : moments.subList(from, to)) {
            least = StrictMath.min(least, what.applyAsDouble(moment));
        }
        return least;
    }

    double least(ToDoubleFunction<Moment> what) {
        return least(0, moments.size(), what);
    }
}
