package rimeward.sim.physics;

import java.util.List;
import rimeward.air.MoistAir;
import rimeward.air.RelativeHumidity;
import rimeward.air.Saturation;

/**
 * The physical truth of one tunnel, stepped through time; for one thread. A step allocates nothing.
 *
 * <p>Long steps are done in several. Where a thermostat, float, timer or cut-out turns within a step, the step is
 * cut there, so that the length of the steps does not show in the result.
 */
public final class Tunnel {
    /** Longest step, s: with it 5 s and 1 s agree within 0.02 K, thermostats included. */
    private static final double LONGEST_S = 5;

    /** Shorter remains of a step are not worth a step of their own, s. */
    private static final double TINY_S = 1e-6;

    /** Liquid a film can hold before it runs off, kg/m² (common practice, no source). */
    private static final double FILM_HOLDS_KG_PER_M2 = 0.06;

    private final TunnelParameters parameters;
    private final State now = new State();
    private final State next = new State();
    private final State before = new State();
    private final State middle = new State();
    private final Flows flows = new Flows();
    private final Crossings crossings = new Crossings();
    private final Outside outside = new Outside();
    private final Balance balance;
    private final Lumps lumps;
    private final Heater heater;
    private final Dryer dryer;
    private final Openings openings;
    private final HeatLedger heat;
    private final WaterLedger water;
    private final BenchParameters[] benches;
    private final double filmHoldsKg;
    private double elapsedS;
    private double lastS = 1;

    /** Begins in {@code start}, under a calm and overcast sky at the same temperature until {@link #outside()} is set. */
    public Tunnel(TunnelParameters parameters, MachineParameters machines, StartState start) {
        this.parameters = parameters;
        double pressurePa = MoistAir.pressurePa(parameters.altitudeM());
        begin(start, pressurePa);
        outside.set(start.airC(), now.humidityKgPerKg, pressurePa, 0, start.airC(), 0);
        heater = new Heater(machines.heater(), now);
        dryer = new Dryer(machines.dryer(), now);
        openings = new Openings(parameters, machines.ventFan());
        balance = new Balance(parameters, machines.heater(), dryer.body());
        lumps = new Lumps(parameters, balance, machines.heater(), dryer.body());
        heat = new HeatLedger(parameters, balance.airJPerK(), machines.heater(), dryer.body(), now);
        water = new WaterLedger(balance.dryAirKg(), now);
        benches = parameters.benches().toArray(new BenchParameters[0]);
        filmHoldsKg = FILM_HOLDS_KG_PER_M2 * parameters.coverM2();
    }

    private void begin(StartState start, double pressurePa) {
        double vapourPa = RelativeHumidity.vapourFromOverWaterPa(start.airC(), start.rhPercent());
        now.airC = start.airC();
        now.massC = start.massC();
        now.elementC = start.airC();
        now.dryerC = start.airC();
        now.bimetalC = start.airC();
        now.filmC = start.airC();
        now.filmOutsideC = start.airC();
        now.humidityKgPerKg = MoistAir.humidityRatioKgPerKg(vapourPa, pressurePa);
        now.saturationKgPerKg = WetSurface.saturatedKgPerKg(start.airC(), pressurePa);
        now.humidistatPercent = start.rhPercent();
        now.mediumWaterKg = start.mediumWaterKg();
        now.tankKg = start.tankKg();
        before.copyFrom(now);
    }

    private void primeFilm() {
        heater.settle();
        dryer.settle(elapsedS);
        dryer.lay(now);
        balance.freeze(now, outside, openings);
        solve(TINY_S);
        now.filmC = next.filmC;
        now.filmOutsideC = next.filmOutsideC;
    }

    /** Steps forwards under the weather of {@link #outside()} and with the contacts as they are. */
    public void advance(double stepS) {
        if (elapsedS == 0) {
            primeFilm();
        }
        double leftS = stepS;
        while (leftS > TINY_S) {
            heater.settle();
            dryer.settle(elapsedS);
            double tryS = Math.min(Math.min(leftS, LONGEST_S), Math.max(TINY_S, dryer.untilTimerS(elapsedS)));
            middle.guessMiddle(before, now, Math.min(tryS / lastS, 1) / 2);
            dryer.lay(middle);
            balance.freeze(middle, outside, openings);
            double takenS = stepUpTo(leftS - tryS < TINY_S ? leftS : tryS);
            elapsedS += takenS;
            leftS -= takenS;
        }
    }

    /** Steps until the first contact turns, at most {@code stepS}; returns how far it came. */
    private double stepUpTo(double stepS) {
        double doneS = tryStep(stepS);
        crossings.clear();
        offer();
        if (crossings.isAny()) {
            double wholeS = doneS;
            if (wholeS * crossings.share() < TINY_S) {
                crossings.flip();
                return 0;
            }
            doneS = tryStep(wholeS * crossings.share());
            crossings.refine();
            offer();
            doneS = tryStep(wholeS * crossings.refinedShare());
        }
        commit(doneS);
        crossings.flip();
        return doneS;
    }

    private void offer() {
        heater.offer(crossings, now, next);
        dryer.offer(crossings, now, next);
    }

    /** Fills {@link #next}, again and shorter if water was taken where there was none; returns the length that could be done. */
    private double tryStep(double stepS) {
        double tryS = stepS;
        solve(tryS);
        if (next.isOverdrawn()) {
            balance.guardFilm(middle);
            solve(tryS);
        }
        while (next.isOverdrawn()) {
            tryS /= 2;
            solve(tryS);
        }
        lumps.follow(now, next, balance, tryS);
        return tryS;
    }

    private void solve(double stepS) {
        balance.solve(now, outside, heater, dryer, stepS);
        balance.read(flows, outside, heater, dryer);
        lumps.carry(now, flows, next, stepS);
        next.saturationKgPerKg = WetSurface.saturatedKgPerKg(next.airC, outside.pressurePa);
        next.filmC = balance.filmC();
        next.filmOutsideC = balance.filmOutsideC();
    }

    private void commit(double stepS) {
        heat.book(flows, stepS);
        water.book(flows, stepS);
        heater.book(stepS);
        dryer.book(stepS);
        openings.book(stepS);
        before.copyFrom(now);
        now.copyFrom(next);
        lastS = stepS;
        if (now.filmWaterKg > filmHoldsKg) {
            runOff(now.filmWaterKg - filmHoldsKg);
        }
        if (now.mediumWaterKg < parameters.mediumLowKg()) {
            pour(parameters.mediumFullKg() - now.mediumWaterKg);
        }
    }

    private void runOff(double kg) {
        double toMediumKg = parameters.runOffToMediumShare() * kg;
        now.filmWaterKg -= kg;
        now.mediumWaterKg += toMediumKg;
        water.add(WaterPath.RUN_OFF, toMediumKg - kg);
    }

    private void pour(double kg) {
        now.mediumWaterKg += kg;
        water.add(WaterPath.WATERING, kg);
    }

    /** Empties the dryer's tank. */
    public void emptyTank() {
        water.add(WaterPath.EMPTYING, -now.tankKg);
        now.tankKg = 0;
        dryer.emptied();
    }

    /** Time since the start, s. */
    public double elapsedS() {
        return elapsedS;
    }

    /** The weather; set it before each step. */
    public Outside outside() {
        return outside;
    }

    public Heater heater() {
        return heater;
    }

    public Dryer dryer() {
        return dryer;
    }

    public Openings openings() {
        return openings;
    }

    public HeatLedger heat() {
        return heat;
    }

    public WaterLedger water() {
        return water;
    }

    public List<BenchParameters> benches() {
        return parameters.benches();
    }

    /** Mean air temperature, °C. */
    public double airC() {
        return now.airC;
    }

    /** Temperature of pots, slab and top soil, °C. */
    public double massC() {
        return now.massC;
    }

    /** Temperature of the heater's element, °C. */
    public double elementC() {
        return now.elementC;
    }

    /** Temperature of the dryer's rotor or coil, °C. */
    public double dryerC() {
        return now.dryerC;
    }

    /** Temperature of the cover's inner surface in the last step, °C. */
    public double filmC() {
        return now.filmC;
    }

    public double humidityKgPerKg() {
        return now.humidityKgPerKg;
    }

    public double vapourPa() {
        return MoistAir.vapourPa(now.humidityKgPerKg, outside.pressurePa);
    }

    /** Dew point over water, °C; slow, so not at every step. */
    public double dewPointC() {
        return MoistAir.dewPointC(vapourPa());
    }

    /** Air temperature at the plants of a bench, °C. */
    public double benchC(int bench) {
        return benches[bench].benchC(now.airC, outside.airC);
    }

    /** Relative humidity over water at the plants of a bench, %; above 100 where dew is falling. */
    public double benchRhPercent(int bench) {
        return RelativeHumidity.overWaterPercent(benchC(bench), vapourPa());
    }

    /** Air temperature at the coldest bench, °C. */
    public double coldestBenchC() {
        double coldestC = benches[0].benchC(now.airC, outside.airC);
        for (int i = 1; i < benches.length; i++) {
            coldestC = Math.min(coldestC, benches[i].benchC(now.airC, outside.airC));
        }
        return coldestC;
    }

    /** Whether dew falls on the film now. */
    public boolean isFilmAtDewPoint() {
        return vapourPa() >= Saturation.overSurfacePa(now.filmC);
    }

    /** Whether dew falls at a bench now: air and leaves there are as cold as the dew point. */
    public boolean isBenchAtDewPoint(int bench) {
        return vapourPa() >= Saturation.overWaterPa(benchC(bench));
    }

    /** Heat that the air lost in the last step to everything but machines, W; negative where it gained. */
    public double airLossW() {
        return flows.airToFilmW + flows.airToMassW - flows.leakW - flows.sunToAirW;
    }

    /** What one kelvin more costs, W/K: the cover with standard surfaces, and the leakage of the moment; without the ground. */
    public double heatLossWPerK() {
        return Panel.lossWPerK(parameters.cover()) + balance.leakWPerK();
    }

    /** Liquid on the film, kg. */
    public double filmWaterKg() {
        return now.filmWaterKg;
    }

    /** Frost and ice on the film, kg. */
    public double filmFrostKg() {
        return now.filmFrostKg;
    }

    public double mediumWaterKg() {
        return now.mediumWaterKg;
    }

    public double tankKg() {
        return now.tankKg;
    }

    /** Ice on the coil of a compressor dryer, kg. */
    public double coilIceKg() {
        return now.coilIceKg;
    }

    /** Water collected by the dryer since the start, kg. */
    public double collectedKg() {
        return water.movedKg(WaterPath.COLLECTION);
    }
}
