package rimeward.homie;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.ByteBuffer;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rimeward.alert.Alert;
import rimeward.alert.AlertKind;
import rimeward.core.outlook.Outlook;
import rimeward.core.reading.Frame;
import rimeward.json.Json;
import rimeward.site.Degrees;
import rimeward.site.Messaging;
import rimeward.site.Site;

/**
 * The rules of the Homie convention, version 5 (homieiot/convention, {@code convention.md} of 2024-10-17), one test each, over the
 * documented example and over seeded odd sites.
 */
final class ConformanceTest {
    private static final int ODD_SITES = 12;
    private static final String LEVEL = "[a-z0-9-]+";

    /** What a tunnel says in a while of anything, from connecting to leaving. */
    private static Exchange evening(Site site, long seed) {
        Exchange exchange = new Exchange(site, Exchange.open("homie"));
        Random random = new Random(seed);
        exchange.connect();
        for (int i = 0; i < 30; i++) {
            exchange.outlook = i % 10 < 5 ? Outlook.NONE : new Outlook.Night(i / 10, -7.25, 1.5, 30_000 - 5.0 * i);
            Frame frame = OddSites.frame(site, random, i, seed % 2 == 0);
            exchange.tick(frame);
            if (i == 10) {
                exchange.send(exchange.device.planned(OddPlans.of(site, 12)));
                exchange.send(exchange.device.of(7, alert(site, Alert.Change.RAISED, frame)));
            }
            exchange.send(exchange.device.log(HomieDevice.Level.WARN, "a line"));
        }
        return exchange;
    }

    private static Alert alert(Site site, Alert.Change change, Frame frame) {
        return OddAlerts.of(AlertKind.TANK_FULL, site.id(), change, frame.tick(), "The tank is full. Empty it.");
    }

    private static List<Site> sites() {
        List<Site> sites = new ArrayList<>(List.of(OddSites.example()));
        for (int seed = 0; seed < ODD_SITES; seed++) {
            sites.add(OddSites.of(seed));
        }
        return sites;
    }

    private static List<Exchange> evenings() {
        List<Exchange> all = new ArrayList<>();
        long seed = 0;
        for (Site site : sites()) {
            all.add(evening(site, seed++));
        }
        return all;
    }

    private static Json description(Exchange exchange) {
        return read(exchange.value(exchange.base() + "/$description").orElseThrow());
    }

    private static Json read(String text) {
        try {
            return Payload.json(text);
        } catch (Misheard e) {
            throw new AssertionError(text, e);
        }
    }

    private static String text(Json json, String name) {
        return json.get(name).orElse(new Json.Text("")) instanceof Json.Text text ? text.text() : "no text";
    }

    /** One declared property with its topic. */
    private record Declared(String topic, Json json) {}

    private static List<Declared> properties(Exchange exchange) {
        List<Declared> all = new ArrayList<>();
        Json nodes = description(exchange).get("nodes").orElseThrow();
        for (String node : nodes.names()) {
            Json properties = nodes.get(node).orElseThrow().get("properties").orElseThrow();
            for (String property : properties.names()) {
                all.add(new Declared(
                        exchange.base() + "/" + node + "/" + property,
                        properties.get(property).orElseThrow()));
            }
        }
        return all;
    }

    // ---- topics

    @Test
    void topicsAreDomainFiveDeviceNodeProperty() {
        for (Exchange exchange : evenings()) {
            assertThat(exchange.base()).isEqualTo("homie/5/" + exchange.site.id());
            assertThat(exchange.sent)
                    .allMatch(m -> m.topic().startsWith(exchange.base() + "/"))
                    .allMatch(m -> m.topic()
                            .matches("homie/5/" + LEVEL + "/(\\$" + LEVEL + "(/" + LEVEL + ")?|" + LEVEL + "/" + LEVEL
                                    + ")"));
        }
    }

    @Test
    void theDomainMayBeSetAndTheFiveMayNot() {
        Exchange exchange = new Exchange(OddSites.example(), Exchange.open("hill-farm"));
        exchange.connect();
        assertThat(exchange.base()).isEqualTo("hill-farm/5/hallin-rigg");
        assertThat(exchange.device.subscriptions()).allMatch(filter -> filter.startsWith("hill-farm/5/hallin-rigg/"));
    }

    @Test
    void idsAreLowerCaseLettersDigitsAndHyphensAndNeverTwice() {
        for (Exchange exchange : evenings()) {
            List<String> topics =
                    properties(exchange).stream().map(Declared::topic).toList();
            assertThat(topics)
                    .doesNotHaveDuplicates()
                    .allMatch(topic -> topic.matches("homie/5/" + LEVEL + "/" + LEVEL + "/" + LEVEL));
        }
    }

    @Test
    void consumersDiscoverByTheState() {
        for (Exchange exchange : evenings()) {
            assertThat(exchange.kept.keySet())
                    .filteredOn(topic -> Exchange.matches("+/5/+/$state", topic))
                    .hasSize(1);
        }
    }

    // ---- retained, quality of service

    @Test
    void everythingIsRetainedAtQualityTwoButTheLog() {
        for (Exchange exchange : evenings()) {
            assertThat(exchange.sent)
                    .isNotEmpty()
                    .allMatch(m -> m.topic().contains("/$log/")
                            ? !m.retained() && m.qos() == 0
                            : m.retained() && m.qos() == 2);
        }
    }

    @Test
    void aPropertyThatIsNotRetainedIsNeverPublishedRetained() {
        for (Exchange exchange : evenings()) {
            List<String> passing = properties(exchange).stream()
                    .filter(p -> p.json().get("retained").orElseThrow().equals(new Json.Word("false")))
                    .map(Declared::topic)
                    .toList();
            assertThat(passing).isNotEmpty().doesNotContainAnyElementsOf(exchange.kept.keySet());
        }
    }

    @Test
    void aMessageWithoutPayloadDeletesItsTopic() {
        Exchange exchange = evening(OddSites.example(), 3);
        String topic = exchange.base() + "/bench-door-bench/temperature";
        Random random = new Random(3);
        long deleted = 0;
        for (int i = 30; i < 300; i++) {
            exchange.tick(OddSites.frame(exchange.site, random, i, true));
        }
        for (Message message : exchange.sent) {
            deleted += message.topic().equals(topic) && message.isDeleting() ? 1 : 0;
        }
        assertThat(deleted).isPositive();
    }

    @Test
    void theEmptyTextIsOneByteZero() {
        Exchange exchange = new Exchange(OddSites.example(), Exchange.open("homie"));
        exchange.connect();
        exchange.tick(OddSites.frame(exchange.site, new Random(1), 0, true));
        assertThat(exchange.value(exchange.base() + "/orders/acknowledge")).contains("\0");
        assertThat(exchange.value(exchange.base() + "/alerts/newest")).contains("\0");
    }

    // ---- payloads

    @Test
    void payloadsAreUtf8WithoutByteOrderMark() throws Exception {
        for (Exchange exchange : evenings()) {
            for (Message message : exchange.sent) {
                String text = UTF_8.newDecoder()
                        .decode(ByteBuffer.wrap(message.payload()))
                        .toString();
                assertThat(text).doesNotStartWith("\ufeff");
            }
        }
    }

    @Test
    void valuesAreOfTheirDatatypeAndFormat() {
        for (Exchange exchange : evenings()) {
            for (Declared property : properties(exchange)) {
                exchange.sent.stream()
                        .filter(m -> m.topic().equals(property.topic()) && !m.isDeleting())
                        .forEach(m -> assertThat(isSound(property.json(), m.text()))
                                .as(m + " of " + property.json())
                                .isTrue());
            }
        }
    }

    private static boolean isSound(Json property, String value) {
        String format = text(property, "format");
        return switch (text(property, "datatype")) {
            case "integer" -> value.matches("-?\\d{1,18}") && isWithin(format, Double.parseDouble(value));
            case "float" ->
                value.matches("-?\\d+(\\.\\d+)?([eE]-?\\d+)?") && isWithin(format, Double.parseDouble(value));
            case "boolean" -> value.equals("true") || value.equals("false");
            case "enum" -> Arrays.asList(format.split(",")).contains(value);
            case "datetime" -> Instant.parse(value).getEpochSecond() > 1_700_000_000L;
            case "duration" -> value.matches("PT(\\d+H)?(\\d+M)?(\\d+S)?");
            case "json" -> read(value) instanceof Json.Members || read(value) instanceof Json.Elements;
            case "string" -> true;
            default -> false;
        };
    }

    private static boolean isWithin(String format, double value) {
        if (format.isEmpty()) {
            return true;
        }
        String[] limits = format.split(":", -1);
        return (limits[0].isEmpty() || value >= Double.parseDouble(limits[0]))
                && (limits[1].isEmpty() || value <= Double.parseDouble(limits[1]));
    }

    // ---- life cycle

    @Test
    void theLastWillSaysLost() {
        for (Exchange exchange : evenings()) {
            assertThat(exchange.device.will())
                    .isEqualTo(new Message(exchange.base() + "/$state", "lost".getBytes(UTF_8), 2, true));
        }
    }

    @Test
    void theStateGoesFromInitToReadyToDisconnected() {
        for (Exchange exchange : evenings()) {
            exchange.send(exchange.device.atStop());
            assertThat(exchange.sent)
                    .filteredOn(m -> m.topic().endsWith("/$state"))
                    .extracting(Message::text)
                    .containsExactly("init", "ready", "disconnected");
        }
    }

    @Test
    void readyMeansDescribedValuedAndSubscribed() {
        for (Site site : sites()) {
            Exchange exchange = new Exchange(site, Exchange.open("homie"));
            exchange.connect();
            exchange.tick(OddSites.frame(site, new Random(9), 0, true));
            List<String> topics = exchange.sent.stream().map(Message::topic).toList();
            assertThat(exchange.sent.get(exchange.sent.size() - 1).text()).isEqualTo("ready");
            assertThat(topics).contains(exchange.base() + "/$description");
            for (Declared property : properties(exchange)) {
                boolean retained = property.json().get("retained").orElseThrow().equals(new Json.Word("true"));
                assertThat(topics.contains(property.topic()))
                        .as(property.topic())
                        .isEqualTo(retained);
                if (property.json().get("settable").orElseThrow().equals(new Json.Word("true"))) {
                    assertThat(exchange.device.subscriptions())
                            .anyMatch(filter -> Exchange.matches(filter, property.topic() + "/set"));
                }
            }
        }
    }

    @Test
    void aLateWillIsPutRight() {
        Exchange exchange = evening(OddSites.example(), 4);
        exchange.send(List.of(exchange.device.will()));
        exchange.tick(OddSites.frame(exchange.site, new Random(1), 31, true));
        assertThat(exchange.value(exchange.base() + "/$state")).contains("ready");
    }

    @Test
    void aBrokerThatLetsNobodyReadDoesNotKeepItFromBeingReady() {
        Exchange exchange = new Exchange(OddSites.example(), Exchange.open("homie"));
        exchange.readable = false;
        exchange.connect();
        for (int i = 0; i < 4; i++) {
            exchange.tick(OddSites.frame(exchange.site, new Random(1), i, true));
        }
        assertThat(exchange.value(exchange.base() + "/$state")).contains("ready");
    }

    // ---- description

    @Test
    void theDescriptionHasWhatTheConventionAsksFor() {
        for (Exchange exchange : evenings()) {
            Json root = description(exchange);
            assertThat(text(root, "homie")).isEqualTo("5.0");
            assertThat(exchange.value(exchange.base() + "/$description").orElseThrow())
                    .containsPattern("\"version\":\\d+,");
            assertThat(text(root, "name")).isEqualTo(exchange.site.name());
            assertThat(root.names()).doesNotContain("root", "parent"); // a root device has neither
            for (Declared property : properties(exchange)) {
                assertThat(property.json().names()).contains("name", "datatype", "settable", "retained");
                assertThat(property.json().names())
                        .isSubsetOf("name", "datatype", "format", "settable", "retained", "unit");
            }
        }
    }

    @Test
    void theVersionStaysWhileNothingChangesAndRisesWithEveryChange() {
        Exchange exchange = evening(OddSites.example(), 5);
        double first = version(exchange);
        exchange.restart(exchange.site, Exchange.open("homie"));
        again(exchange);
        assertThat(version(exchange)).isEqualTo(first);
        exchange.restart(exchange.site, Exchange.mqtt("homie", List.of()));
        again(exchange);
        assertThat(version(exchange)).isGreaterThan(first);
        double second = version(exchange);
        exchange.restart(exchange.site, Exchange.open("homie"));
        again(exchange);
        assertThat(version(exchange)).isGreaterThan(second);
    }

    @Test
    void theVersionRisesThoughTheClockIsYearsBack() {
        Exchange exchange = evening(OddSites.example(), 6);
        double first = version(exchange);
        exchange.restart(exchange.site, Exchange.mqtt("homie", List.of()));
        exchange.connect();
        Frame frame = OddSites.frame(exchange.site, new Random(1), 0, true);
        exchange.tick(new Frame(
                new rimeward.core.reading.Tick(0, 0, new rimeward.core.reading.WallTime(1000, true)), frame.senses()));
        assertThat(version(exchange)).isGreaterThan(first);
    }

    private static void again(Exchange exchange) {
        exchange.connect();
        exchange.tick(OddSites.frame(exchange.site, new Random(1), 0, true));
    }

    private static double version(Exchange exchange) {
        return description(exchange).get("version").orElseThrow() instanceof Json.Figure figure ? figure.value() : -1;
    }

    @Test
    void theDescriptionChangesOnlyWhileTheStateIsInit() {
        for (Exchange exchange : evenings()) {
            exchange.restart(exchange.site, Exchange.mqtt("homie", List.of()));
            again(exchange);
            String state = "";
            for (Message message : exchange.sent) {
                state = message.topic().endsWith("/$state") ? message.text() : state;
                assertThat(!message.topic().endsWith("/$description") || state.equals("init"))
                        .isTrue();
            }
        }
    }

    @Test
    void formatsAreWhatTheirDatatypesAskFor() {
        for (Exchange exchange : evenings()) {
            for (Declared property : properties(exchange)) {
                String format = text(property.json(), "format");
                assertThat(isFormat(text(property.json(), "datatype"), format))
                        .as(property.toString())
                        .isTrue();
            }
        }
    }

    private static boolean isFormat(String datatype, String format) {
        List<String> parts = Arrays.asList(format.split(",", -1));
        return switch (datatype) {
            case "integer", "float" ->
                format.isEmpty() || format.matches("(-?\\d+(\\.\\d+)?)?:(-?\\d+(\\.\\d+)?)?(:\\d+(\\.\\d+)?)?");
            case "enum" -> !parts.contains("") && new HashSet<>(parts).size() == parts.size();
            case "boolean" ->
                format.isEmpty() || (parts.size() == 2 && !parts.get(0).equals(parts.get(1)));
            case "json" -> read(format) instanceof Json.Members;
            default -> format.isEmpty();
        };
    }

    @Test
    void unitsAreTheConventionsByteForByte() {
        Set<String> units = Set.of(
                "\u00b0C", "\u00b0F", "%", "W", "kW", "kWh", "L", "Pa", "V", "A", "s", "min", "h", "K", "m/s", "#", "");
        for (Exchange exchange : evenings()) {
            assertThat(properties(exchange)).allMatch(p -> units.contains(text(p.json(), "unit")));
        }
        assertThat(Degrees.CELSIUS.unit().getBytes(UTF_8)).containsExactly(0xc2, 0xb0, 0x43);
        assertThat(Degrees.FAHRENHEIT.unit().getBytes(UTF_8)).containsExactly(0xc2, 0xb0, 0x46);
    }

    // ---- set

    @Test
    void onlySettablePropertiesTakeASet() {
        for (Exchange exchange : evenings()) {
            for (Declared property : properties(exchange)) {
                if (property.json().get("settable").orElseThrow().equals(new Json.Word("false"))) {
                    assertThat(exchange.hear(property.topic() + "/set", "1".getBytes(UTF_8), false, false))
                            .isInstanceOf(Heard.Refused.class);
                }
            }
        }
    }

    @Test
    void nothingIsSettableUnlessTheSettingsAllowIt() {
        Exchange exchange = new Exchange(OddSites.example(), Exchange.mqtt("homie", List.of()));
        exchange.connect();
        exchange.tick(OddSites.frame(exchange.site, new Random(1), 0, true));
        assertThat(properties(exchange))
                .isNotEmpty()
                .allMatch(p -> p.json().get("settable").orElseThrow().equals(new Json.Word("false")));
        assertThat(exchange.device.subscriptions()).noneMatch(filter -> filter.endsWith("/set"));
    }

    @Test
    void eachSettingMakesItsOwnPropertiesSettable() {
        for (Messaging.Command command : Messaging.Command.values()) {
            Exchange exchange = new Exchange(OddSites.example(), Exchange.mqtt("homie", List.of(command)));
            exchange.connect();
            exchange.tick(OddSites.frame(exchange.site, new Random(1), 0, true));
            assertThat(properties(exchange).stream()
                            .filter(p -> p.json().get("settable").orElseThrow().equals(new Json.Word("true")))
                            .count())
                    .isEqualTo(command == Messaging.Command.STAND_DOWN ? 4 : 1);
        }
    }

    @Test
    void noTargetIsUsedSoNoneIsOwed() {
        assertThat(evenings())
                .allMatch(exchange ->
                        exchange.sent.stream().noneMatch(m -> m.topic().contains("$target")));
    }

    // ---- alerts, log, broadcast, removal

    @Test
    void anAlertIsARetainedTextThatIsDeletedWhenItIsOver() {
        Exchange exchange = evening(OddSites.example(), 8);
        assertThat(exchange.kept.values())
                .filteredOn(m -> m.topic().startsWith(exchange.base() + "/$alert/"))
                .extracting(Message::text)
                .containsExactly("The tank is full. Empty it.");
        Frame frame = OddSites.frame(exchange.site, new Random(1), 31, true);
        exchange.send(exchange.device.of(8, alert(exchange.site, Alert.Change.CLEARED, frame)));
        assertThat(exchange.kept.keySet()).noneMatch(t -> t.contains("/$alert/") || t.contains("/$incident/"));
    }

    @Test
    void theLogIsNotRetainedAndCanBeSwitchedOff() {
        Exchange exchange = evening(OddSites.example(), 8);
        assertThat(exchange.device.log(HomieDevice.Level.FATAL, "x"))
                .containsExactly(new Message(exchange.base() + "/$log/fatal", "x".getBytes(UTF_8), 0, false));
        Exchange silent = new Exchange(exchange.site, Exchange.withoutLog());
        silent.connect();
        silent.tick(OddSites.frame(silent.site, new Random(1), 0, true));
        assertThat(silent.device.log(HomieDevice.Level.FATAL, "x")).isEmpty();
    }

    @Test
    void broadcastsAreIgnored() {
        Exchange exchange = evening(OddSites.example(), 8);
        assertThat(exchange.device.subscriptions()).noneMatch(f -> Exchange.matches(f, "homie/5/$broadcast/alert"));
        Heard heard = exchange.hear("homie/5/$broadcast/alert", "fire".getBytes(UTF_8), false, false);
        assertThat(heard).isEqualTo(new Heard.Noted(List.of(), List.of()));
    }

    @Test
    void removalTakesTheStateFirstAndLeavesNothing() {
        for (Exchange exchange : evenings()) {
            Removal removal = new Removal(exchange.site, exchange.mqtt);
            List<Message> old = List.copyOf(exchange.kept.values());
            assertThat(old).allMatch(message -> Exchange.matches(removal.filter(), message.topic()));
            old.forEach(message -> removal.heard(message.topic(), message.payload(), true));
            assertThat(removal.isComplete()).isFalse();
            assertThat(removal.first()).isEqualTo(new Message(exchange.base() + "/$state", new byte[0], 2, true));
            removal.heard(removal.first().topic(), removal.first().payload(), false);
            assertThat(removal.isComplete()).isTrue();
            exchange.send(List.of(removal.first()));
            exchange.send(removal.rest());
            assertThat(exchange.kept).isEmpty();
        }
    }

    @Test
    void whatAnEarlierRunDeclaredAndThisOneDoesNotIsTakenAway() {
        Exchange exchange = evening(OddSites.of(3), 9);
        Site other = renamed(exchange.site);
        exchange.restart(other, Exchange.open("homie"));
        exchange.connect();
        exchange.tick(OddSites.frame(other, new Random(1), 0, true));
        Set<String> declared =
                new HashSet<>(properties(exchange).stream().map(Declared::topic).toList());
        assertThat(exchange.kept.keySet())
                .filteredOn(topic -> !topic.contains("/$"))
                .isSubsetOf(declared);
    }

    /** The same place with the example's sensors. */
    private static Site renamed(Site site) {
        return new Site(
                site.id(),
                site.name(),
                site.zone(),
                site.plants(),
                site.targets(),
                site.tunnel(),
                OddSites.example().sensors(),
                site.heater(),
                site.drying(),
                site.venting(),
                site.circuit(),
                site.tariff(),
                site.door());
    }
}
