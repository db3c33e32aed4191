package rimeward.map;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/**
 * Owns the map: whoever needs an import that is not in these tables changes them here, in {@code DEVELOPERS.md} and in the
 * package's {@code package-info}, in the same commit, and says why.
 */
final class MapTest {

    /** Package below {@code rimeward}, and the packages of ours it may import; {@code x.*} is x and all below it. */
    static final String OURS = """
            site              |
            air               |
            json              |
            strip             |
            report            | strip
            sizing            | air site
            core.reading      | site
            core.judgement    | core.reading air site
            core.tunnel       | core.judgement air site
            core.watch        | core.judgement core.reading core.tunnel air site
            core.outlook      | core.tunnel core.judgement air site
            core.order        | core.outlook
            core.decision     | core.judgement core.tunnel core.watch core.outlook air site
            core.guard        | core.decision core.judgement core.watch core.tunnel site
            core              | core.* site
            alert             | core.* site
            record            | core.* alert air site
            homie             | core.* alert json record site
            page              | core.* homie alert record json report strip sizing air site
            port              | core core.reading core.guard core.order alert core.outlook record site
            planning          | core.* port record air site
            service           | core.* port record alert site
            adapter.pi        | port core.reading core.guard site
            fitting           | port core.reading site
            adapter.mqtt      | core.* homie port alert record site
            adapter.journal   | core.* port record alert site
            adapter.forecast  | port core.outlook core.reading json air site
            adapter.web       | core.* page port json record report alert sizing site
            adapter.config    | site
            assembly          | core.* homie page planning port service alert record adapter.journal adapter.mqtt adapter.web site
            app               | *

            sim.physics       | air
            sim.weather       | air
            sim.fault         |
            sim.world         | sim.physics sim.weather sim.fault
            sim.device        | port core.reading core.guard site air sim.world sim.fault
            sim.scenario      | sim.physics sim.weather sim.fault sim.world sim.device adapter.config site
            sim.law           | core.decision core.judgement core.outlook site
            sim.check         | core.decision core.judgement site
            sim.run           | sim.physics sim.weather sim.fault sim.world sim.device sim.law sim.check sim.scenario service port record alert core.* air site
            sim.bound         | sim.physics sim.weather sim.fault sim.world sim.scenario sim.run air site
            sim.sweep         | sim.physics sim.weather sim.fault sim.world sim.device sim.scenario sim.check sim.run adapter.journal port alert core.* json air site
            sim.report        | sim.run sim.sweep sim.check core.guard core.judgement alert site report strip
            sim.app           | sim.run sim.bound sim.sweep sim.report sim.scenario sim.check assembly core.* alert record report adapter.journal adapter.config site
            """;

    /** Libraries and parts of the JDK that only the named packages may import; no other library at all. */
    static final String DOORS = """
            com.pi4j                | adapter.pi
            org.eclipse.paho        | adapter.mqtt
            javax.net               | adapter.mqtt
            java.sql                | adapter.journal
            javax.sql               | adapter.journal
            org.sqlite              | adapter.journal
            org.hipparchus          | core.tunnel
            org.ojalgo              | sim.bound
            java.net.http           | adapter.forecast
            org.tomlj               | adapter.config
            picocli                 | app sim.app
            org.slf4j               | service adapter.* app sim.app
            org.jspecify            | *
            java                    | *
            """;

    private final JavaClasses production = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("rimeward");

    private final MapRules rules = new MapRules("rimeward", MapTable.parse(OURS), MapTable.parse(DOORS));

    @Test
    void bothProgramsAreSeen() {
        assertThat(production.contain("rimeward.app.Main")).isTrue();
        assertThat(production.contain("rimeward.sim.app.Main")).isTrue();
        assertThat(production).extracting(JavaClass::getPackageName).doesNotContain("rimeward.map");
    }

    @Test
    void importsStayOnTheMap() {
        rules.importsStayOnTheMap().check(production);
    }

    @Test
    void librariesComeInByTheirDoor() {
        rules.librariesComeInByTheirDoor().check(production);
    }

    @Test
    void packagesFormNoCycle() {
        rules.packagesFormNoCycle().check(production);
    }

    @Test
    void pureCodeTouchesNothingOutside() {
        rules.pureCodeTouchesNothingOutside().check(production);
    }

    @Test
    void timeAndChanceAreHandedIn() {
        rules.timeAndChanceAreHandedIn().check(production);
    }

    @Test
    void sameBytesOnAnyMachine() {
        rules.sameBytesOnAnyMachine().check(production);
    }

    @Test
    void packagesSayWhatTheyAreFor() {
        rules.packagesSayWhatTheyAreFor().check(production);
    }

    @Test
    void theGuideShowsTheSameMap() throws IOException {
        String guide = Files.readString(Path.of("..", "DEVELOPERS.md"));
        assertThat(MapTable.fromMarkdown(guide)).isEqualTo(MapTable.parse(OURS));
    }
}
