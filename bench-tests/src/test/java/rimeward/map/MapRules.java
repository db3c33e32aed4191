package rimeward.map;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** The rules for all classes below one root package, so that they can be tried on a planted tree as well as on the program. */
record MapRules(String root, MapTable ours, MapTable doors) {

    /** Only computes: no file, network, thread, clock or log can be reached from here. */
    private static final List<String> PURE = List.of(
            "site",
            "air",
            "json",
            "strip",
            "sizing",
            "core.*",
            "homie",
            "planning",
            "page",
            "sim.physics",
            "sim.fault",
            "sim.world",
            "sim.check");

    private static final Set<String> PURE_JDK = Set.of(
            "java.lang",
            "java.lang.annotation",
            "java.lang.invoke",
            "java.lang.runtime",
            "java.math",
            "java.nio",
            "java.nio.charset",
            "java.time",
            "java.time.zone",
            "java.util",
            "java.util.function",
            "java.util.random",
            "java.util.regex",
            "java.util.stream",
            "org.hipparchus.analysis", // these only compute, too
            "org.hipparchus.exception",
            "org.hipparchus.linear",
            "org.hipparchus.special",
            "org.jspecify.annotations");

    /** They wire the program up, so they hand the clock to those who may use it. */
    private static final List<String> CLOCK_KEEPERS = List.of("app", "sim.app");

    ArchRule importsStayOnTheMap() {
        return noClassHas("an import that the map does not show", this::importsOffTheMap);
    }

    ArchRule librariesComeInByTheirDoor() {
        return noClassHas("a library that may not come in here", this::librariesElsewhere);
    }

    ArchRule pureCodeTouchesNothingOutside() {
        return noClassHas("a way out of pure code", this::waysOut);
    }

    ArchRule timeAndChanceAreHandedIn() {
        return noClassHas("a clock or dice of its own", this::clocksAndDice);
    }

    ArchRule sameBytesOnAnyMachine() {
        return noClassHas(
                "a call whose answer depends on the machine", owner -> accesses(owner, MachineDependence::isCauseOf));
    }

    ArchRule packagesSayWhatTheyAreFor() {
        return noClassHas(
                "a package without package-info",
                owner -> owner.getPackage().tryGetPackageInfo().isPresent()
                        ? Stream.empty()
                        : Stream.of(owner.getPackageName() + " has no package-info"));
    }

    ArchRule packagesFormNoCycle() {
        return slices().matching(root + ".(**)").should().beFreeOfCycles();
    }

    private Stream<String> importsOffTheMap(JavaClass owner) {
        String from = place(owner);
        if (!ours.has(from)) {
            return Stream.of(owner.getName() + " lies in a package that is not on the map");
        }
        return owner.getDirectDependenciesFromSelf().stream()
                .filter(dependency -> isOurs(target(dependency)))
                .filter(dependency -> !place(target(dependency)).equals(from))
                .filter(dependency -> !ours.allows(from, place(target(dependency))))
                .map(Dependency::getDescription);
    }

    private Stream<String> librariesElsewhere(JavaClass owner) {
        return libraries(owner)
                .filter(dependency -> !mayEnter(target(dependency).getPackageName(), place(owner)))
                .map(Dependency::getDescription);
    }

    /** The longest door that fits decides: {@code java.sql} before {@code java}. */
    private boolean mayEnter(String library, String place) {
        return doors.rows().keySet().stream()
                .filter(door -> MapTable.covers(door + ".*", library))
                .max(Comparator.comparingInt(String::length))
                .filter(door -> doors.allows(door, place))
                .isPresent();
    }

    private Stream<String> waysOut(JavaClass owner) {
        if (!isIn(PURE, owner)) {
            return Stream.empty();
        }
        Stream<String> imports = libraries(owner)
                .filter(dependency -> !PURE_JDK.contains(target(dependency).getPackageName()))
                .map(Dependency::getDescription);
        return Stream.concat(imports, accesses(owner, MapRules::leavesPureCode));
    }

    private static boolean leavesPureCode(JavaAccess<?> access) {
        return switch (access.getTargetOwner().getName()) {
            case "java.lang.System" -> !access.getName().equals("arraycopy");
            case "java.lang.Thread", "java.lang.ThreadLocal", "java.lang.Runtime", "java.lang.ProcessBuilder" -> true;
            case "java.util.Scanner", "java.util.Timer", "java.util.ServiceLoader" -> true;
            default -> false;
        };
    }

    private Stream<String> clocksAndDice(JavaClass owner) {
        boolean keepsTheClock = isIn(CLOCK_KEEPERS, owner);
        return accesses(owner, access -> Chance.isDrawnBy(access) || (!keepsTheClock && WallClock.isReadBy(access)));
    }

    private Stream<Dependency> libraries(JavaClass owner) {
        return owner.getDirectDependenciesFromSelf().stream()
                .filter(dependency -> !isOurs(target(dependency)))
                .filter(dependency -> !target(dependency).isPrimitive());
    }

    private static Stream<String> accesses(JavaClass owner, Predicate<JavaAccess<?>> forbidden) {
        return owner.getAccessesFromSelf().stream().filter(forbidden).map(JavaAccess::getDescription);
    }

    private static JavaClass target(Dependency dependency) {
        return dependency.getTargetClass().getBaseComponentType();
    }

    private boolean isOurs(JavaClass type) {
        return MapTable.covers(root + ".*", type.getPackageName());
    }

    private boolean isIn(List<String> entries, JavaClass type) {
        return entries.stream().anyMatch(entry -> MapTable.covers(entry, place(type)));
    }

    /** The package as the map names it: without the root. */
    private String place(JavaClass type) {
        String name = type.getPackageName();
        return name.equals(root) ? "" : name.substring(root.length() + 1);
    }

    private static ArchRule noClassHas(String what, Function<JavaClass, Stream<String>> faults) {
        return classes().should(new ArchCondition<>("not have " + what) {
            @Override
            public void check(JavaClass owner, ConditionEvents events) {
                faults.apply(owner).sorted().forEach(fault -> events.add(SimpleConditionEvent.violated(owner, fault)));
            }
        });
    }
}
