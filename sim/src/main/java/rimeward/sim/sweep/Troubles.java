package rimeward.sim.sweep;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import rimeward.sim.fault.Fault;
import rimeward.sim.fault.FaultKind;
import rimeward.sim.fault.SeededStream;
import rimeward.sim.scenario.StandDownAt;
import rimeward.site.Machine;
import rimeward.site.Sensor;
import rimeward.site.Site;

/**
 * Everything that is made to go wrong: each kind of fault, and what takes several of them or an order (all inside sensors or all humidity
 * lost, a heater or a dryer taken out of use for service). Seeds count through them, so that enough winters meet each alone and each pair.
 */
final class Troubles {
    private static final List<String> KINDS = kinds();
    private static final String BLIND = "every-inside-sensor-lost";
    private static final String NO_HUMIDITY = "every-humidity-lost";
    private static final String HEATER_SERVICE = "heater-in-service";
    private static final String DRYER_SERVICE = "dryer-in-service";

    /** Of every ten seeds one has no trouble, one a storm of them, two a single one, and six a pair. Own choice. */
    private static final int ROUND = 10;

    /** Neighbours in the list are much alike, so the count leaps through it; prime to its 31 kinds, and to their 465 pairs. */
    private static final int LEAP = 12;

    private static final int PAIR_LEAP = 182;

    private static final double LEAST_S = 300;
    private static final double MOST_S = 12 * 3600;
    private static final double LONGEST_SERVICE_S = 4 * 3600;

    private final Site site;
    private final SeededStream luck;

    Troubles(Site site, SeededStream luck) {
        this.site = site;
        this.luck = luck;
    }

    private static List<String> kinds() {
        List<String> all = new ArrayList<>();
        Stream.of(FaultKind.values()).map(FaultKind::label).forEach(all::add);
        all.addAll(List.of("every-inside-sensor-lost", "every-humidity-lost", "heater-in-service", "dryer-in-service"));
        return List.copyOf(all);
    }

    /** Whether this seed has troubles all over instead of chosen ones. */
    static boolean isStorm(long seed) {
        return Math.floorMod(seed, ROUND) == 5;
    }

    /** Names of what goes wrong in this seed's winter: none, one, or two that differ. */
    static List<String> namesOf(long seed) {
        int place = Math.floorMod(seed, ROUND);
        int round = (int) Math.floorMod(Math.floorDiv(seed, ROUND), 1_000_000L);
        return switch (place) {
            case 0, 5 -> List.of();
            case 1, 2 -> List.of(KINDS.get((2 * round + place - 1) % KINDS.size() * LEAP % KINDS.size()));
            default -> pair(6 * round + (place < 5 ? place - 3 : place - 4));
        };
    }

    /** Pairs in an order of their own, each once before any comes again. */
    private static List<String> pair(int number) {
        int size = KINDS.size();
        int pairs = size * (size - 1) / 2;
        int left = number % pairs * PAIR_LEAP % pairs;
        for (int first = 0; ; first++) {
            int with = size - 1 - first;
            if (left < with) {
                return List.of(KINDS.get(first), KINDS.get(first + 1 + left));
            }
            left -= with;
        }
    }

    static int countOfNames() {
        return KINDS.size();
    }

    /** What a name means at this site; nothing where the site has no such machine. */
    List<Trouble> of(String name) {
        double part = luck.nextDouble();
        double lastsS = StrictMath.rint(LEAST_S + (MOST_S - LEAST_S) * part * part);
        return switch (name) {
            case BLIND ->
                one(
                        name,
                        inside().map(id -> Fault.of(0, FaultKind.SENSOR_LOST, id, lastsS))
                                .toList());
            case NO_HUMIDITY ->
                one(
                        name,
                        inside().map(id -> Fault.of(0, FaultKind.HUMIDITY_LOST, id, lastsS))
                                .toList());
            case HEATER_SERVICE -> service(name, site.heater().stages(), lastsS);
            case DRYER_SERVICE ->
                service(
                        name,
                        site.machines().stream()
                                .filter(machine -> machine.role() == rimeward.site.Role.DRYER)
                                .toList(),
                        lastsS);
            default -> one(name, List.of(fault(FaultKind.ofLabel(name), lastsS)));
        };
    }

    private static List<Trouble> one(String name, List<Fault> faults) {
        return List.of(new Trouble(name, faults, List.of()));
    }

    private static List<Trouble> service(String name, List<Machine> machines, double lastsS) {
        double forS = Math.min(LONGEST_SERVICE_S, lastsS);
        List<StandDownAt> orders = machines.stream()
                .map(machine -> new StandDownAt(0, machine.id(), forS))
                .toList();
        return orders.isEmpty() ? List.of() : List.of(new Trouble(name, List.of(), orders));
    }

    private Fault fault(FaultKind kind, double lastsS) {
        double magnitude = kind.usualMagnitude() * luck.between(0.5, 2);
        boolean turned = kind.leastMagnitude() < 0 && luck.below(2) == 1;
        return new Fault(
                0,
                kind,
                target(kind),
                kind.isMomentary() ? 0 : lastsS,
                Double.parseDouble(Toml.number(turned ? -magnitude : magnitude)));
    }

    private String target(FaultKind kind) {
        if (!kind.needsTarget()) {
            return "";
        }
        List<String> ids = kind.isOfSensor()
                ? site.sensors().stream().map(Sensor::id).toList()
                : site.heater().stages().stream().map(Machine::id).toList();
        return ids.get(luck.below(ids.size()));
    }

    private Stream<String> inside() {
        return site.sensors().stream()
                .filter(sensor -> sensor.place().isInside())
                .map(Sensor::id);
    }

    /** For reports. */
    static String inWords(List<Trouble> troubles) {
        return troubles.isEmpty()
                ? "none"
                : String.join(" + ", troubles.stream().map(Trouble::name).toList())
                        .toLowerCase(Locale.ROOT);
    }
}
