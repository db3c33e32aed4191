package rimeward.page;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import rimeward.alert.Alert;
import rimeward.core.outlook.PlanPromise;
import rimeward.record.FrameRow;
import rimeward.record.Night;
import rimeward.record.Switched;
import rimeward.report.Legend;
import rimeward.report.LogEntry;
import rimeward.report.LogTable;
import rimeward.report.Paper;
import rimeward.report.Say;
import rimeward.site.Site;
import rimeward.strip.Mark;
import rimeward.strip.Markup;
import rimeward.strip.Span;
import rimeward.strip.Stamp;

/** What became of a night, on one sheet that can be printed and kept: made of what the record has, with the replay's own pieces. */
public final class NightReport {
    private static final List<String> NOTES = List.of(
            "Temperatures and humidities are what the sensors said, where that was believed; of the coldest bench its sensor's uncertainty is taken"
                    + " off, as control does. Nobody knows what they did not see.",
            "A lane's bar is as high as the power drawn, by the machine's meter where it has one. A thin line means: asked to run.",
            "Water is reckoned from the dryer's running time: rather too much.",
            "Rimeward is a control program and no safety device; no safety certification is claimed. Keep an independent frost alarm.");

    private final Site site;
    private final NightSpan nightSpan;
    private final Span span;
    private final Optional<PlanPromise> plan;
    private final List<FrameRow> rows = new ArrayList<>();
    private final NightFacts facts;
    private final Markup to = new Markup();

    /** @param plan what was promised of it */
    public NightReport(Site site, NightSpan nightSpan, Optional<PlanPromise> plan) {
        this.site = site;
        this.nightSpan = nightSpan;
        this.plan = plan;
        ZoneOffset offset = site.zone().getRules().getOffset(Instant.ofEpochSecond(nightSpan.fromEpochS()));
        span = new Span(nightSpan.fromEpochS(), nightSpan.toEpochS(), offset);
        facts = new NightFacts(site, floorC());
    }

    private double floorC() {
        return plan.map(PlanPromise::floorC).orElse(site.floorC());
    }

    /** Takes a kept frame; in the order they were taken. */
    public void add(FrameRow row) {
        rows.add(row);
        facts.add(row);
    }

    /** The whole page. */
    public String html(Night night, List<Switched> switches, List<Alert> alerts) {
        List<Alert> raised = alerts.stream().filter(Alert::isNew).toList();
        Paper.begin("The night of " + Stamp.date(span.startS(), span.offset()) + " – " + site.name(), to);
        head(night);
        to.line().open("main");
        verdict(night, raised);
        Paper.section("strip", "The strip", to);
        legend();
        new NightSheet(site, span, floorC(), rows).strip(marks(raised)).draw(to);
        to.close();
        Paper.section("log", "The log", to);
        LogTable.draw(
                span.offset(),
                log(switches, alerts),
                "the night's table, " + nightSpan.evening() + ".csv, has every minute.",
                to);
        to.close();
        Paper.section("notes", "Notes", to);
        to.open("ul");
        NOTES.forEach(note -> to.line().put("li", note));
        to.close().close().close().line();
        return Paper.end(to);
    }

    private void head(Night night) {
        to.line().open("header").open("div", "class", "form");
        to.put("p", "Rimeward – night report", "class", "maker")
                .put("h1", "The night of " + Stamp.date(span.startS(), span.offset()));
        to.open("dl");
        Paper.field("Place", site.name(), to);
        Paper.field("Electricity", Say.with(night.kWh(), 1, "kWh"), to);
        Paper.field("Cost", Say.with(night.cost(), 2, site.tariff().currency()), to);
        Paper.field("Water", Say.with(night.litresEstimated(), 1, "L"), to);
        Paper.field("Watched for", Say.duration((long) night.seenS()), to);
        to.close().close().close();
    }

    private void verdict(Night night, List<Alert> raised) {
        boolean seen = facts.isSeen();
        boolean held = facts.underFloorS() == 0;
        String word = !seen ? "Unseen" : held ? "Held" : "Broke";
        to.line().open("section", "class", "verdict", "aria-labelledby", "verdict");
        to.put("h2", word, "id", "verdict", "class", seen && held ? "stamp" : "stamp bad");
        to.open("div")
                .put("p", floor(seen, held), "class", "floor")
                .put("p", rest(night, raised))
                .close();
        to.close();
    }

    private String floor(boolean seen, boolean held) {
        if (!seen) {
            return "No bench was seen that night.";
        }
        String lowest = Say.degrees(facts.lowestC()) + " (" + facts.lowestBench(site)
                + ", less what its sensor may be off)"; // as control counts it; the list of nights has it as read
        return held
                ? "The floor of " + Say.degrees(floorC()) + " held: lowest " + lowest + "."
                : "The floor of " + Say.degrees(floorC()) + " broke: " + Say.duration((long) facts.underFloorS())
                        + " below it, lowest " + lowest + ".";
    }

    private String rest(Night night, List<Alert> raised) {
        String told = raised.isEmpty()
                ? "No alert was raised."
                : Say.count(raised.size(), "alert was", "alerts were") + " raised.";
        String promised = plan.map(made -> " The plan had foreseen "
                        + Say.degrees(made.lowestBenchC().value())
                        + " at the lowest bench and "
                        + Say.with(made.nightKWh(), 1, "kWh") + ".")
                .orElse("");
        return told
                + promised
                + (night.wetS() > 0 ? " It was damp for " + Say.duration((long) night.wetS()) + "." : "");
    }

    private void legend() {
        Legend.open(to);
        Legend.line("pen coldest", "coldest bench", to);
        Legend.line("pen outside", "outside", to);
        Legend.line("pen dew", "dew point", to);
        Legend.line("limit floor", "floor", to);
        Legend.line("pen rh", "humidity", to);
        Legend.bar("heater", "heater draws power", to);
        Legend.bar("dryer", "dryer draws power", to);
        Legend.line("asked", "asked to run", to);
        to.close();
    }

    private static List<Mark> marks(List<Alert> raised) {
        List<Mark> marks = new ArrayList<>();
        for (Alert alert : raised) {
            marks.add(new Mark(
                    alert.at().wall().epochS(),
                    "A" + (marks.size() + 1),
                    "alert",
                    alert.kind().title()));
        }
        return marks;
    }

    private List<LogEntry> log(List<Switched> switches, List<Alert> alerts) {
        List<LogEntry> entries = new ArrayList<>();
        for (Switched each : switches) {
            String why = sentence(each.why().sentence(site.degrees())) + (each.overruled() ? " The guard's word." : "");
            entries.add(new LogEntry(
                    each.at().wall().epochS(),
                    LogEntry.Kind.SWITCH,
                    each.machine() + (each.on() ? " on" : " off"),
                    why));
        }
        int number = 0;
        for (Alert alert : alerts) {
            boolean over = alert.change() == Alert.Change.CLEARED;
            if (alert.isNew() || over) {
                String code = over ? "" : "A" + ++number + " ";
                String what = code + alert.kind().title() + (over ? ": over" : "");
                entries.add(
                        new LogEntry(alert.at().wall().epochS(), LogEntry.Kind.ALERT, what, over ? "" : alert.text()));
            }
        }
        entries.sort(Comparator.comparingLong(LogEntry::epochS).thenComparing(LogEntry::kind));
        return entries;
    }

    private static String sentence(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1) + ".";
    }
}
