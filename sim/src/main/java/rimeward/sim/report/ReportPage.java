package rimeward.sim.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rimeward.report.Legend;
import rimeward.report.LogTable;
import rimeward.report.Paper;
import rimeward.sim.run.Comparison;
import rimeward.sim.run.RunResult;
import rimeward.sim.run.ScenarioHeader;
import rimeward.strip.Mark;
import rimeward.strip.Markup;
import rimeward.strip.Stamp;

/** The page: one file that needs no network, no other file, and no script to be understood. */
public final class ReportPage {
    private final Comparison comparison;
    private final ScenarioHeader header;
    private final RunResult first;
    private final String version;
    private final Markup to = new Markup();

    private ReportPage(Comparison comparison, String version) {
        this.comparison = comparison;
        this.header = comparison.header();
        this.first = comparison.results().get(0);
        this.version = version;
    }

    /**
     * The whole page.
     *
     * @param version of the program, for the small print
     */
    public static String of(Comparison comparison, String version) {
        return new ReportPage(comparison, version).write();
    }

    private String write() {
        Paper.begin(header.title() + " – Rimeward replay", to);
        head();
        to.line().open("main");
        verdict();
        laws();
        strip();
        rivals();
        log();
        notes();
        to.close().line();
        return Paper.end(to);
    }

    private void head() {
        to.line().open("header").open("div", "class", "form");
        to.put("p", "Rimeward – replay record", "class", "maker").put("h1", header.title());
        to.open("dl");
        Paper.field("Place", comparison.site().name(), to);
        Paper.field("From", moment(header.startEpochS()), to);
        Paper.field("To", moment(header.endEpochS()), to);
        Paper.field("Law", first.law().name(), to);
        Paper.field("Weather", header.weather(), to);
        to.close().close().close();
    }

    private String moment(long epochS) {
        return Stamp.date(epochS, header.offset()) + ", " + Stamp.clock(epochS, header.offset());
    }

    private void verdict() {
        Verdict verdict = Verdict.of(comparison, first);
        to.line().open("section", "class", "verdict", "aria-labelledby", "verdict");
        to.put("h2", verdict.word(), "id", "verdict", "class", verdict.word().equals("Held") ? "stamp" : "stamp bad");
        to.open("div")
                .put("p", verdict.floor(), "class", "floor")
                .put("p", String.join(" ", verdict.rest()))
                .close();
        to.close();
    }

    private void laws() {
        Paper.section("laws", "The laws beside each other", to);
        to.put("p", header.description());
        LawTable.draw(comparison, to);
        to.close();
    }

    private void strip() {
        Paper.section("strip", "The strip: " + first.law().name(), to);
        legend();
        NightStrip.of(comparison, first).draw(to);
        marks();
        to.open("details").put("summary", "The same as a table");
        HourTable.draw(header, first.trace(), to);
        to.close().close();
    }

    private void legend() {
        Legend.open(to);
        Legend.line("pen coldest", "coldest bench", to);
        Legend.line("pen seen", "as the controller sees it", to);
        Legend.line("pen outside", "outside", to);
        Legend.line("limit floor", "floor", to);
        Legend.line("pen rh", "humidity", to);
        Legend.line("pen dew", "dew point", to);
        Legend.line("pen film", "film", to);
        Legend.bar("heater", "heater draws power", to);
        Legend.bar("dryer", "dryer draws power", to);
        Legend.line("asked", "asked, but draws nothing", to);
        to.close();
    }

    /** The marks' words in full, for narrow screens and for those who do not see the strip. */
    private void marks() {
        List<Mark> all = Marks.of(header, first).all();
        if (all.isEmpty()) {
            return;
        }
        Map<String, List<Mark>> byText = new LinkedHashMap<>();
        all.forEach(mark ->
                byText.computeIfAbsent(mark.text(), text -> new ArrayList<>()).add(mark));
        to.open("dl", "class", "marks");
        for (List<Mark> alike : byText.values()) {
            to.line()
                    .open("div")
                    .put("dt", alike.get(0).code())
                    .put("dd", alike.get(0).text() + ": " + times(alike));
            to.close();
        }
        to.close();
    }

    private String times(List<Mark> alike) {
        StringBuilder text = new StringBuilder();
        for (Mark mark : alike) {
            text.append(text.isEmpty() ? "" : "; " + mark.code() + " ");
            text.append(Stamp.day(mark.epochS(), header.offset())).append(' ');
            text.append(Stamp.clock(mark.epochS(), header.offset()));
        }
        return text.toString();
    }

    private void rivals() {
        List<RunResult> rivals =
                comparison.results().subList(1, comparison.results().size());
        if (rivals.isEmpty()) {
            return;
        }
        Paper.section("rivals", "The rivals, same weather, same scale", to);
        to.open("div", "class", "rivals small");
        for (RunResult rival : rivals) {
            Verdict verdict = Verdict.of(comparison, rival);
            to.line().open("figure").put("h3", rival.law().name());
            RivalStrip.of(comparison, rival).draw(to);
            to.open("figcaption").put("strong", verdict.word() + ". ");
            to.text(verdict.floor() + " " + String.join(" ", verdict.rest()))
                    .close()
                    .close();
        }
        to.close().close();
    }

    private void log() {
        Paper.section("log", "The log: " + first.law().name(), to);
        LogTable.draw(header.offset(), LogBook.of(header, first), "trace.csv holds every tick's relays.", to);
        to.close();
    }

    private void notes() {
        Paper.section("notes", "Notes", to);
        Notes.draw(comparison, version, to);
        to.close();
    }
}
