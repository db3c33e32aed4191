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
    private final TunnelParameters parameters;
    private final BenchParameters[] benches;
    private final State now = new State();
    private final Outside outside = new Outside();
    private final Balance balance;
    private final Heater heater;
    private final Dryer dryer;
    private final Openings openings;
    private final HeatLedger heat;
    private final WaterLedger water;
    private final Pourings pourings;
    private final Stepper stepper;
    private double vapourPa;

    /** Begins in {@code start}, under a calm and overcast sky at the same temperature until {@link #outside()} is set. */
    public Tunnel(TunnelParameters parameters, MachineParameters machines, StartState start) {
        this.parameters = parameters;
        benches = parameters.benches().toArray(new BenchParameters[0]);
        double pressurePa = MoistAir.pressurePa(parameters.altitudeM());
        now.begin(start, pressurePa);
        outside.set(start.airC(), now.humidityKgPerKg, pressurePa, 0, start.airC(), 0);
        heater = new Heater(machines.heater(), now);
        dryer = new Dryer(machines.dryer(), now);
        openings = new Openings(parameters, machines.ventFan());
        balance = new Balance(parameters, machines.heater(), dryer.body());
        heat = new HeatLedger(parameters, balance.airJPerK(), machines.heater(), dryer.body(), now);
        water = new WaterLedger(balance.dryAirKg(), now);
        pourings = new Pourings(parameters, now, water);
        Lumps lumps = new Lumps(parameters, balance, machines.heater(), dryer.body());
        stepper = new Stepper(now, outside, balance, lumps, heater, dryer, openings, heat, water, pourings);
        vapourPa = MoistAir.vapourPa(now.humidityKgPerKg, pressurePa);
    }

    /** Steps forwards under the weather of {@link #outside()} and with the contacts as they are. */
    public void advance(double stepS) {
        stepper.advance(stepS);
        vapourPa =
                MoistAir.vapourPa(now.humidityKgPerKg, outside.pressurePa); // once: sensors and checks all ask for it
    }

    /** For {@link IdealTunnel}. */
    State state() {
        return now;
    }

    /** Goes on from where {@link #state()} was put. */
    void resume() {
        stepper.resume();
    }

    /** Empties the dryer's tank. */
    public void emptyTank() {
        pourings.emptyTank();
        dryer.emptied();
    }

    /** Time since the start, s. */
    public double elapsedS() {
        return stepper.elapsedS();
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
        return vapourPa;
    }

    /** Dew point over water, °C; slow, so not at every step. */
    public double dewPointC() {
        return MoistAir.dewPointC(vapourPa);
    }

    /** Air temperature at the plants of a bench, °C. */
    public double benchC(int bench) {
        return benches[bench].benchC(now.airC, outside.airC);
    }

    /** Relative humidity over water at the plants of a bench, %; above 100 where dew is falling. */
    public double benchRhPercent(int bench) {
        return RelativeHumidity.overWaterPercent(benchC(bench), vapourPa);
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
        return vapourPa >= Saturation.overSurfacePa(now.filmC);
    }

    /** Heat that the air lost in the last step to everything but machines, W; negative where it gained. */
    public double airLossW() {
        return stepper.flows.airToFilmW + stepper.flows.airToMassW - stepper.flows.leakW - stepper.flows.sunToAirW;
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
