package rimeward.map;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchRule;
import java.util.Collection;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Each rule finds the faults planted for it, and finds nothing else. */
final class MapRulesTest {

    private static final String ROOT = "rimeward.map.planted";

    private final JavaClasses planted = new ClassFileImporter().importPackages(ROOT);
    private final MapRules rules = new MapRules(ROOT, MapTable.parse(MapTest.OURS), MapTable.parse(MapTest.DOORS));

    @Test
    void findsImportsOffTheMap() {
        assertThat(culprits(rules.importsStayOnTheMap()))
                .containsExactly(
                        "air.KnowsSite",
                        "package-info",
                        "record.There",
                        "sim.physics.KnowsReading",
                        "sim.weather.cache.Stray");
    }

    @Test
    void findsLibrariesAtTheWrongDoor() {
        assertThat(culprits(rules.librariesComeInByTheirDoor())).containsExactly("core.judgement.OpensDatabase");
    }

    @Test
    void findsWaysOutOfPureCode() {
        assertThat(culprits(rules.pureCodeTouchesNothingOutside()))
                .containsExactly("core.judgement.OpensDatabase", "core.outlook.WritesFile", "core.tunnel.StartsThread");
    }

    @Test
    void findsClocksAndDice() {
        assertThat(culprits(rules.timeAndChanceAreHandedIn()))
                .containsExactly("service.ReadsClock", "sim.fault.ThrowsDice");
        assertThat(faults(rules.timeAndChanceAreHandedIn()))
                .hasSize(5)
                .anyMatch(fault -> fault.contains("Instant.now()"))
                .anyMatch(fault -> fault.contains("System.nanoTime()"))
                .anyMatch(fault -> fault.contains("System.currentTimeMillis()"))
                .anyMatch(fault -> fault.contains("Math.random()"))
                .anyMatch(fault -> fault.contains("Random.<init>()"));
    }

    @Test
    void findsWhatDependsOnTheMachine() {
        assertThat(faults(rules.sameBytesOnAnyMachine()))
                .hasSize(5)
                .anyMatch(fault -> fault.contains("Math.exp(double)"))
                .anyMatch(fault -> fault.contains("Math.pow(double, double)"))
                .anyMatch(fault -> fault.contains("Math.sin(double)"))
                .anyMatch(fault -> fault.contains("nextGaussian()"))
                .anyMatch(fault -> fault.contains("Math.random()"));
    }

    @Test
    void findsCycles() {
        assertThat(faults(rules.packagesFormNoCycle()))
                .singleElement()
                .asString()
                .contains("There", "Back");
    }

    @Test
    void findsPackagesThatSayNothing() {
        assertThat(culprits(rules.packagesSayWhatTheyAreFor()))
                .contains("air.KnowsSite", "core.reading.Honest")
                .doesNotContain("site.Floor");
    }

    @Test
    void readsTheMapFromTheGuide() {
        String guide = """
                | package | purpose | may import |
                |---|---|---|
                | `air` | about air | nothing of ours |
                | `core` | all of it | `core.*`, `air` |
                | habit | learned | elsewhere |
                """;
        assertThat(MapTable.fromMarkdown(guide)).isEqualTo(MapTable.parse("air |\ncore | air core.*"));
    }

    @Test
    void refusesTwoRowsForOnePackage() {
        assertThatThrownBy(() -> MapTable.parse("air |\nair | site")).hasMessageContaining("two rows for air");
    }

    private List<String> faults(ArchRule rule) {
        return rule.evaluate(planted).getFailureReport().getDetails();
    }

    /** Names, below the planted root, of the classes in which the rule finds fault. */
    private SortedSet<String> culprits(ArchRule rule) {
        var names = new TreeSet<String>();
        rule.evaluate(planted)
                .handleViolations((Collection<JavaClass> owners, String message) ->
                        owners.forEach(owner -> names.add(owner.getName().substring(ROOT.length() + 1))));
        return names;
    }
}
