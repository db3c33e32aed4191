package rimeward.sim.world;

import rimeward.sim.physics.BenchParameters;
import rimeward.sim.physics.DryerPhase;
import rimeward.sim.physics.HeatLedger;
import rimeward.sim.physics.Tunnel;
import rimeward.sim.physics.WaterLedger;
import rimeward.sim.weather.WeatherCursor;

/** What is so in a {@link World} now: a view that reads and changes nothing. For the world's thread. */
public final class Truth {
    private final Tunnel tunnel;
    private final Contacts contacts;
    private final WeatherCursor weather;

    Truth(Tunnel tunnel, Contacts contacts, WeatherCursor weather) {
        this.tunnel = tunnel;
        this.contacts = contacts;
        this.weather = weather;
    }

    public int benches() {
        return tunnel.benches().size();
    }

    /** Place of a bench by its name. */
    public int bench(String name) {
        for (int i = 0; i < tunnel.benches().size(); i++) {
            if (tunnel.benches().get(i).name().equals(name)) {
                return i;
            }
        }
        throw new IllegalArgumentException("no bench \"" + name + "\"; there are "
                + tunnel.benches().stream().map(BenchParameters::name).toList());
    }

    public String benchName(int bench) {
        return tunnel.benches().get(bench).name();
    }

    /** Air temperature at the plants of a bench, °C. */
    public double benchC(int bench) {
        return tunnel.benchC(bench);
    }

    public double coldestBenchC() {
        return tunnel.coldestBenchC();
    }

    /** Relative humidity over water at a bench, %. */
    public double benchRhPercent(int bench) {
        return tunnel.benchRhPercent(bench);
    }

    public boolean isFilmAtDewPoint() {
        return tunnel.isFilmAtDewPoint();
    }

    /** Mean air temperature, °C. */
    public double airC() {
        return tunnel.airC();
    }

    public double massC() {
        return tunnel.massC();
    }

    /** Temperature of the heater's element, °C. */
    public double elementC() {
        return tunnel.elementC();
    }

    public double filmC() {
        return tunnel.filmC();
    }

    /** Dew point of the inside air, °C; slow, so not at every tick. */
    public double dewPointC() {
        return tunnel.dewPointC();
    }

    public double vapourPa() {
        return tunnel.vapourPa();
    }

    public double humidityKgPerKg() {
        return tunnel.humidityKgPerKg();
    }

    public double outsideAirC() {
        return weather.outsideAirC();
    }

    public double outsideVapourPa() {
        return weather.vapourPa();
    }

    public double pressurePa() {
        return weather.pressurePa();
    }

    public double filmWaterKg() {
        return tunnel.filmWaterKg();
    }

    public double filmFrostKg() {
        return tunnel.filmFrostKg();
    }

    public double tankKg() {
        return tunnel.tankKg();
    }

    public double collectedKg() {
        return tunnel.collectedKg();
    }

    public boolean isTankFull() {
        return tunnel.dryer().isTankFull();
    }

    public boolean isDryerSatisfied() {
        return tunnel.dryer().isSatisfied();
    }

    public DryerPhase dryerPhase() {
        return tunnel.dryer().phase();
    }

    /** Whether the dryer's own lock against cold air has stopped it. */
    public boolean isDryerTooCold() {
        return tunnel.dryer().isTooCold();
    }

    public boolean isHeaterCutOutOpen() {
        return tunnel.heater().isCutOutOpen();
    }

    public boolean isHeaterDialOpen() {
        return tunnel.heater().isDialOpen();
    }

    public boolean isDoorOpen() {
        return tunnel.openings().isDoorOpen();
    }

    public int machines() {
        return contacts.size();
    }

    public boolean isContactClosed(int machine) {
        return contacts.isClosed(machine);
    }

    /** How often a machine's contact has closed. */
    public int starts(int machine) {
        return contacts.starts(machine);
    }

    /** Electric power of a machine, W. */
    public double powerW(int machine) {
        return contacts.powerW(machine);
    }

    /** Electric energy of a machine since the start, J. */
    public double energyJ(int machine) {
        return contacts.energyJ(machine);
    }

    /** Heat that the air loses now to everything but machines, W. */
    public double airLossW() {
        return tunnel.airLossW();
    }

    /** What one kelvin more costs, W/K, without the ground. */
    public double heatLossWPerK() {
        return tunnel.heatLossWPerK();
    }

    public HeatLedger heat() {
        return tunnel.heat();
    }

    public WaterLedger water() {
        return tunnel.water();
    }
}
