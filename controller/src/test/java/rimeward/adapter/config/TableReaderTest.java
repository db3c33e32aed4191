package rimeward.adapter.config;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The reader as another settings file would use it. */
class TableReaderTest {

    private final Faults faults = new Faults();

    @Test
    void readsAScenarioOfFaults() {
        TableReader top = reader("[[fault]]\nat = \"02:14\"\nkind = \"heater-fuse\"\nlasts = \"45m\"\n");
        TableReader fault = top.tables("fault").get(0);
        assertThat(fault.get("at", Kinds.timeOfDay())).isEqualTo(134);
        assertThat(fault.get("kind", Kinds.id())).isEqualTo("heater-fuse");
        assertThat(fault.get("lasts", Kinds.duration())).isEqualTo(Duration.ofMinutes(45));
        assertThatCode(faults::throwIfAny).doesNotThrowAnyException();
    }

    @Test
    void timesAreReadStrictly() {
        TableReader top = reader("at = \"24:00\"\nlasts = \"1.5h\"\n");
        top.get("at", Kinds.timeOfDay());
        top.get("lasts", Kinds.duration());
        assertThatThrownBy(faults::throwIfAny).hasMessage("""
                        s.toml:1: at = "24:00" must be a time of day "HH:MM"; write it like "23:30"
                        s.toml:2: lasts = "1.5h" must be a length of time such as "90s", "45m", "12h" or "14d"; write a whole number and s, m, h or d""");
    }

    @Test
    void wholeNumbersAreNumbersToo() {
        assertThat(reader("x = 4").get("x", Kinds.number(0, 10))).isEqualTo(4.0);
    }

    @Test
    void listsBlameTheItem() {
        TableReader top = reader("laws = [\n\"duty\",\n3]\n");
        assertThat(top.list("laws", Kinds.id())).hasSize(2);
        assertThatThrownBy(faults::throwIfAny)
                .hasMessage(
                        "s.toml:3: laws[2] = 3 must be lower-case letters, digits and '-' only, in quotes; put it in double quotes");
    }

    @Test
    void nothingIsBuiltOverAFault() {
        TableReader top = reader("[a]\nx = 11\n[b]\ny = 1\n");
        TableReader a = top.table("a");
        TableReader b = top.table("b");
        a.get("x", Kinds.number(0, 10));
        b.get("y", Kinds.number(0, 10));
        assertThat(a.whenSound(() -> "a")).isEmpty();
        assertThat(b.whenSound(() -> "b")).contains("b");
        assertThat(top.whenSound(() -> "top")).isEmpty();
    }

    @Test
    void whatAConstructorRefusesIsAFaultOfItsTable() {
        TableReader a = reader("\n[a]\nx = 1\n").table("a");
        a.get("x", Kinds.number(0, 10));
        a.whenSound(() -> {
            throw new IllegalArgumentException("x is odd");
        });
        assertThatThrownBy(faults::throwIfAny).hasMessage("s.toml:2: [a] is refused: x is odd; change what it names");
    }

    @Test
    void aMissingTableIsToldWithoutItsKeys() {
        TableReader a = reader("").table("a");
        a.get("x", Kinds.number(0, 10));
        assertThat(a.whenSound(() -> "a")).isEmpty();
        assertThatThrownBy(faults::throwIfAny).hasMessage("s.toml:1: a is missing; add it: a table, [a]");
    }

    @Test
    void onlyATableThatMayBeLeftOutCanBeNone() {
        TableReader top = reader("a = \"none\"\nb = \"none\"\n");
        assertThat(top.findTable("a")).isEmpty();
        assertThat(top.findTable("c")).isEmpty();
        assertThat(top.isSound()).isTrue();
        assertThat(top.table("b").isSound()).isFalse();
        assertThatThrownBy(faults::throwIfAny)
                .hasMessage("s.toml:2: b = \"none\" must be a table; write [b] and its keys below");
    }

    @Test
    void keysThatMayBeLeftOut() {
        TableReader top = reader("x = 4\n");
        assertThat(top.find("x", Kinds.whole(0, 9))).contains(4);
        assertThat(top.find("y", Kinds.whole(0, 9))).isEmpty();
        assertThat(top.get("z", Kinds.whole(0, 9), 7)).isEqualTo(7);
        assertThatCode(faults::throwIfAny).doesNotThrowAnyException();
    }

    @Test
    void faultsOfSeveralFilesAreToldTogether() {
        faults.reader(TomlTree.parse("one.toml", "\nx = 1"));
        faults.reader(TomlTree.parse("two.toml", "y = 1"));
        assertThatThrownBy(faults::throwIfAny)
                .isInstanceOfSatisfying(
                        BadSettings.class,
                        bad -> assertThat(bad.faults())
                                .extracting(Fault::where)
                                .containsExactly(new Origin("one.toml", 2), new Origin("two.toml", 1)));
    }

    @Test
    void layingOverKeepsTheLowerKeysAndReplacesArrays() {
        TomlTree lower = TomlTree.parse("low.toml", "list = [1, 2]\n[a]\nx = 1\ny = 2\n");
        TomlTree upper = TomlTree.parse("up.toml", "list = [3]\n[a]\ny = 5\n");
        TableReader top = faults.reader(lower.with(upper));
        Kind<Integer> number = Kinds.whole(0, 9);
        assertThat(top.list("list", number)).isEqualTo(List.of(3));
        TableReader a = top.table("a");
        assertThat(a.get("x", number)).isEqualTo(1);
        assertThat(a.get("y", number)).isEqualTo(5);
    }

    private TableReader reader(String text) {
        return faults.reader(TomlTree.parse("s.toml", text));
    }
}
