package rimeward.site;

import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Everything the controller knows of its place before it looks at a sensor. The machines' order is fixed: heater stages
 * first, then the dryer, then the vent fan; a {@link RelaySet} counts in that order.
 *
 * @param zone the clock that nights and tariff go by
 * @param door whether and how the controller sees an open door
 * @param messaging how messages reach the grower
 * @param floorC the lowest temperature any plant may meet, °C: the highest of the plants' own minimums, or more if the grower asks for it
 * @param degrees what temperatures are told in
 * @param forecasting where forecasts of the weather come from
 * @param page whether it shows itself in a browser
 */
public record Site(
        String id,
        String name,
        ZoneId zone,
        List<Plant> plants,
        Targets targets,
        Tunnel tunnel,
        List<Sensor> sensors,
        Heater heater,
        Drying drying,
        Venting venting,
        Circuit circuit,
        Tariff tariff,
        Contact door,
        Messaging messaging,
        List<Machine> machines,
        double floorC,
        Degrees degrees,
        Forecasting forecasting,
        Page page) {

    /** A place that goes by UTC, without a door contact. */
    public Site(
            String id,
            String name,
            List<Plant> plants,
            Targets targets,
            Tunnel tunnel,
            List<Sensor> sensors,
            Heater heater,
            Drying drying,
            Venting venting,
            Circuit circuit,
            Tariff tariff) {
        this(
                id,
                name,
                ZoneOffset.UTC,
                plants,
                targets,
                tunnel,
                sensors,
                heater,
                drying,
                venting,
                circuit,
                tariff,
                new Contact.NotFitted());
    }

    /** A place that sends no messages. */
    public Site(
            String id,
            String name,
            ZoneId zone,
            List<Plant> plants,
            Targets targets,
            Tunnel tunnel,
            List<Sensor> sensors,
            Heater heater,
            Drying drying,
            Venting venting,
            Circuit circuit,
            Tariff tariff,
            Contact door) {
        this(
                id,
                name,
                zone,
                plants,
                targets,
                tunnel,
                sensors,
                heater,
                drying,
                venting,
                circuit,
                tariff,
                door,
                new Messaging.None());
    }

    public Site(
            String id,
            String name,
            ZoneId zone,
            List<Plant> plants,
            Targets targets,
            Tunnel tunnel,
            List<Sensor> sensors,
            Heater heater,
            Drying drying,
            Venting venting,
            Circuit circuit,
            Tariff tariff,
            Contact door,
            Messaging messaging) {
        this(
                id,
                name,
                zone,
                plants,
                targets,
                tunnel,
                sensors,
                heater,
                drying,
                venting,
                circuit,
                tariff,
                door,
                messaging,
                inOrder(heater, drying, venting),
                highestMinimumC(plants),
                Degrees.CELSIUS,
                new Forecasting.None(),
                new Page.None());
    }

    public Site {
        plants = List.copyOf(plants);
        sensors = List.copyOf(sensors);
        machines = List.copyOf(machines);
        Check.id("site id", id);
        Check.that(!plants.isEmpty(), "name at least one plant: the floor is the highest of the plants' minimums");
        Check.that(sensors.stream().anyMatch(s -> s.place().isInside()), "at least one sensor must hang inside");
        Check.that(machines.equals(inOrder(heater, drying, venting)), "machines are derived, not given");
        Check.that(machines.size() <= RelaySet.MOST, "more than " + RelaySet.MOST + " relays");
        unique("sensor", sensors.stream().map(Sensor::id).toList());
        unique("machine", machines.stream().map(Machine::id).toList());
        Check.within("floorC", floorC, highestMinimumC(plants), Plant.HIGHEST_MINIMUM_C);
        Check.that(
                targets.leavesRoomAbove(floorC),
                "the floor band ends at " + targets.bandEndC(floorC) + " °C, less than " + (int) Targets.HOT_CLEAR_K
                        + " K below hotC = " + targets.hotC());
        double fanW = drying instanceof Drying.Dryer dryer ? dryer.fanW() : 0; // runs on while a heater stage starts
        for (Machine machine : machines) {
            double aloneW = machine.ratedW() + (machine.role() == Role.HEATER_STAGE ? fanW : 0);
            Check.that(
                    aloneW <= circuit.limitW(),
                    machine.id() + " alone draws " + aloneW + " W; the circuit carries " + circuit.limitW()
                            + " W for hours on end");
        }
    }

    /** The same place with another floor, which {@link #takesFloor} must allow. */
    public Site withFloor(double otherC) {
        return with(messaging, otherC, degrees, forecasting, page, tunnel);
    }

    /** The same place, whose tunnel is known to be another. */
    public Site withTunnel(Tunnel other) {
        return with(messaging, floorC, degrees, forecasting, page, other);
    }

    /** The same place, whose grower reads temperatures so. */
    public Site withDegrees(Degrees other) {
        return with(messaging, floorC, other, forecasting, page, tunnel);
    }

    /** The same place with messages by another way. */
    public Site with(Messaging other) {
        return with(other, floorC, degrees, forecasting, page, tunnel);
    }

    /** The same place with forecasts from elsewhere. */
    public Site with(Forecasting other) {
        return with(messaging, floorC, degrees, other, page, tunnel);
    }

    /** The same place with another page. */
    public Site with(Page other) {
        return with(messaging, floorC, degrees, forecasting, other, tunnel);
    }

    private Site with(
            Messaging messages, double holdC, Degrees told, Forecasting forecasts, Page shown, Tunnel stands) {
        return new Site(
                id, name, zone, plants, targets, stands, sensors, heater, drying, venting, circuit, tariff, door,
                messages, machines, holdC, told, forecasts, shown);
    }

    /** Whether this may be the floor: no plant gets colder than it bears, and the hot limit keeps clear of the band, °C. */
    public boolean takesFloor(double otherC) {
        return otherC >= lowestFloorC() && otherC <= Plant.HIGHEST_MINIMUM_C && targets.leavesRoomAbove(otherC);
    }

    /** The lowest floor that the plants bear, °C. */
    public double lowestFloorC() {
        return highestMinimumC(plants);
    }

    /** The highest floor that may be asked for, °C. */
    public double highestFloorC() {
        double belowHotC = targets.hotC() - targets.bandEndC(0) - Targets.HOT_CLEAR_K;
        return StrictMath.max(lowestFloorC(), StrictMath.min(Plant.HIGHEST_MINIMUM_C, belowHotC));
    }

    /** The machines' ids, in their order. */
    public List<String> machineIds() {
        return machines.stream().map(Machine::id).toList();
    }

    /** The machines of a set as people read them. */
    public String inWords(RelaySet set) {
        List<String> ids = new ArrayList<>();
        for (int i = 0; i < machines.size(); i++) {
            if (set.has(i)) {
                ids.add(machines.get(i).id());
            }
        }
        return ids.isEmpty() ? "nothing" : String.join(", ", ids);
    }

    /** All heater stages. */
    public RelaySet heaterStages() {
        return RelaySet.of((1 << heater.stages().size()) - 1);
    }

    /** The dryer's relay; empty where there is no dryer. */
    public RelaySet dryerRelay() {
        return drying instanceof Drying.Dryer ? RelaySet.of(1 << heater.stages().size()) : RelaySet.none();
    }

    /** The vent fan's relay; empty where there is no fan. */
    public RelaySet ventRelay() {
        return venting instanceof Venting.VentFan ? RelaySet.of(1 << (machines.size() - 1)) : RelaySet.none();
    }

    /**
     * The relays that stay closed when nobody controls: what the service leaves behind, what {@code release} restores after it was
     * killed, and what a simulated power cut falls to. A relay on a line does as its settings say; where nothing is wired yet, the
     * first heater stage is left to its own thermostat, and all else is open.
     */
    public RelaySet stopState() {
        RelaySet set = RelaySet.none();
        for (int i = 0; i < machines.size(); i++) {
            boolean stays = machines.get(i).wiring() instanceof Wiring.GpioLine line ? line.closedAtStop() : i == 0;
            set = stays ? set.with(i) : set;
        }
        return set;
    }

    /** Whether any machine's relay hangs on a line. */
    public boolean isWired() {
        return machines.stream().anyMatch(machine -> machine.wiring() instanceof Wiring.GpioLine);
    }

    /** Summed rated power of a set of machines, W. */
    public double ratedW(RelaySet set) {
        double sumW = 0;
        for (int i = 0; i < machines.size(); i++) {
            if (set.has(i)) {
                sumW += machines.get(i).ratedW();
            }
        }
        return sumW;
    }

    private static double highestMinimumC(List<Plant> plants) {
        double floorC = Double.NEGATIVE_INFINITY;
        for (Plant plant : plants) {
            floorC = StrictMath.max(floorC, plant.minimumC());
        }
        return floorC;
    }

    private static List<Machine> inOrder(Heater heater, Drying drying, Venting venting) {
        List<Machine> all = new ArrayList<>(heater.stages());
        if (drying instanceof Drying.Dryer dryer) {
            all.add(dryer.machine());
        }
        if (venting instanceof Venting.VentFan fan) {
            all.add(fan.machine());
        }
        return all;
    }

    private static void unique(String what, List<String> ids) {
        Set<String> seen = new HashSet<>();
        for (String each : ids) {
            Check.that(seen.add(each), "two " + what + "s are called \"" + each + "\"");
        }
    }
}
