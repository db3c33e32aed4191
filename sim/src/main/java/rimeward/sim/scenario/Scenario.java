package rimeward.sim.scenario;

import java.time.ZoneOffset;
import java.util.List;
import rimeward.sim.device.SensorVices;
import rimeward.sim.fault.Fault;
import rimeward.sim.fault.FaultPlan;
import rimeward.sim.physics.MachineParameters;
import rimeward.sim.physics.StartState;
import rimeward.sim.physics.TunnelParameters;
import rimeward.sim.weather.ForecastModel;
import rimeward.sim.weather.WeatherSeries;
import rimeward.sim.world.GrowerRounds;
import rimeward.site.Site;

/**
 * One tunnel in one weather with all that goes wrong: what a replay needs, complete and checked.
 *
 * @param id short name for tables and folders
 * @param title a few words for people
 * @param description what happens, and what to look for
 * @param site what the controller is told of the place
 * @param tunnel what it truly is
 * @param machines what the machines truly are
 * @param machinesByHand the same with the heater's dial as a grower without Rimeward sets it
 * @param sensors how each of the site's sensors differs from the truth
 * @param doorContact whether the controller sees the door
 * @param start how it begins
 * @param weather at least from the first second to the last
 * @param forecast how wrong the evening's forecast is
 * @param startEpochS first second, since 1970 UTC
 * @param lengthS length, s; whole ticks
 * @param tickS control tick, s
 * @param traceEveryS time between two rows of the trace, s; whole ticks
 * @param seed names the luck of sensors and machines
 * @param offset the place's fixed offset from UTC
 * @param faults what goes wrong
 * @param orders what the grower asks for, oldest first
 * @param rounds when the grower empties the tank
 * @param law the law asked for: a name, or a JAR
 * @param against rivals to compare with
 * @param gates what the law must reach
 */
public record Scenario(
        String id,
        String title,
        String description,
        Site site,
        TunnelParameters tunnel,
        MachineParameters machines,
        MachineParameters machinesByHand,
        List<SensorVices> sensors,
        boolean doorContact,
        StartState start,
        WeatherSeries weather,
        ForecastModel forecast,
        long startEpochS,
        long lengthS,
        int tickS,
        int traceEveryS,
        long seed,
        ZoneOffset offset,
        FaultPlan faults,
        List<StandDownAt> orders,
        GrowerRounds rounds,
        String law,
        List<String> against,
        Gates gates) {
    public Scenario {
        orders = List.copyOf(orders);
        against = List.copyOf(against);
        sensors = List.copyOf(sensors);
        if (lengthS < tickS || lengthS % tickS != 0 || traceEveryS % tickS != 0) {
            throw new IllegalArgumentException("a replay of " + lengthS + " s with a trace every " + traceEveryS
                    + " s needs a tick that divides both, not " + tickS + " s");
        }
    }

    /** The same with other things going wrong. */
    public Scenario with(FaultPlan otherFaults, List<StandDownAt> otherOrders) {
        return with(sensors, startEpochS, lengthS, otherFaults, otherOrders, rounds);
    }

    /** The same with sensors that differ from the truth in another way. */
    public Scenario with(List<SensorVices> otherSensors) {
        return with(otherSensors, startEpochS, lengthS, faults, orders, rounds);
    }

    /** A part of it, which begins as the whole does; what goes wrong and who comes keep their hours. */
    public Scenario during(long fromS, long untilS) {
        List<Fault> within = faults.faults().stream()
                .filter(fault -> fault.atS() < untilS && (fault.atS() >= fromS || fault.endsS() > fromS))
                .map(fault -> fault.atS() >= fromS
                        ? new Fault(
                                fault.atS() - fromS, fault.kind(), fault.target(), fault.lastsS(), fault.magnitude())
                        : new Fault(0, fault.kind(), fault.target(), fault.endsS() - fromS, fault.magnitude()))
                .toList();
        List<StandDownAt> asked = orders.stream()
                .filter(order -> order.atS() >= fromS && order.atS() < untilS)
                .map(order -> new StandDownAt(order.atS() - fromS, order.machineId(), order.forS()))
                .toList();
        double goneRounds = Math.max(0, StrictMath.ceil((fromS - rounds.firstS()) / rounds.everyS()));
        double nextRoundS = goneRounds > 0 ? rounds.firstS() + goneRounds * rounds.everyS() : rounds.firstS();
        return with(
                sensors,
                startEpochS + fromS,
                untilS - fromS,
                new FaultPlan(within),
                asked,
                new GrowerRounds(nextRoundS - fromS, rounds.everyS()));
    }

    private Scenario with(
            List<SensorVices> otherSensors,
            long otherStartEpochS,
            long otherLengthS,
            FaultPlan otherFaults,
            List<StandDownAt> otherOrders,
            GrowerRounds otherRounds) {
        return new Scenario(
                id,
                title,
                description,
                site,
                tunnel,
                machines,
                machinesByHand,
                otherSensors,
                doorContact,
                start,
                weather,
                forecast,
                otherStartEpochS,
                otherLengthS,
                tickS,
                traceEveryS,
                seed,
                offset,
                otherFaults,
                otherOrders,
                otherRounds,
                law,
                against,
                gates);
    }
}
