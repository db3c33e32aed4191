package rimeward.sim.physics;

import java.util.List;
import java.util.function.BooleanSupplier;
import rimeward.air.MoistAir;
import rimeward.air.RelativeHumidity;

/** A tunnel under steady weather, to be pushed about by a test. */
final class Night {
    static final double STEP_S = 5;

    final Tunnel tunnel;

    Night(Tunnel tunnel) {
        this.tunnel = tunnel;
        weather(2, 90, 2, -5);
    }

    static Night with(DryerParameters dryer) {
        return with(dryer, Defaults.evening());
    }

    static Night with(DryerParameters dryer, StartState start) {
        DialParameters dial = new DialParameters(25, 2, 180);
        HeaterParameters heater = Defaults.heater(List.of(1000.0, 1000.0), dial);
        return with(Defaults.tunnel(), new MachineParameters(heater, dryer, new VentFanParameters(400, 60)), start);
    }

    static Night with(TunnelParameters tunnel, MachineParameters machines, StartState start) {
        return new Night(new Tunnel(tunnel, machines, start));
    }

    /** The usual tunnel with another area that evaporates, and nobody to water it. */
    static TunnelParameters tunnel(double wetM2) {
        TunnelParameters full = Defaults.tunnel();
        return new TunnelParameters(
                full.cover(),
                full.floorM2(),
                full.volumeM3(),
                full.quickJPerK(),
                full.massJPerK(),
                full.massAirWPerK(),
                full.groundWPerK(),
                full.deepSoilC(),
                full.leakCm2(),
                full.doorCm2(),
                wetM2,
                full.mediumFullKg(),
                0,
                full.runOffToMediumShare(),
                full.sunToMassShare(),
                full.altitudeM(),
                full.benches());
    }

    Night weather(double airC, double rhPercent, double windMPerS, double skyC) {
        double pressurePa = MoistAir.pressurePa(310);
        double vapourPa = RelativeHumidity.vapourFromOverWaterPa(airC, rhPercent);
        double humidity = MoistAir.humidityRatioKgPerKg(vapourPa, pressurePa);
        tunnel.outside().set(airC, humidity, pressurePa, windMPerS, skyC, 0);
        return this;
    }

    Night hours(double hours) {
        return seconds(hours * 3600);
    }

    Night seconds(double seconds) {
        for (double doneS = 0; doneS < seconds; doneS += STEP_S) {
            tunnel.advance(STEP_S);
        }
        return this;
    }

    /** Steps until something is so, and tells how long that took; gives up after a day. */
    double until(BooleanSupplier something) {
        double doneS = 0;
        while (!something.getAsBoolean()) {
            tunnel.advance(STEP_S);
            doneS += STEP_S;
            if (doneS > 86_400) {
                throw new AssertionError("did not happen within a day");
            }
        }
        return doneS;
    }
}
