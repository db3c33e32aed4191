package rimeward.adapter.web;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.nio.ByteBuffer;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rimeward.alert.Alert;
import rimeward.core.outlook.PlanPromise;
import rimeward.page.DayJson;
import rimeward.page.HandsJson;
import rimeward.page.MachineDay;
import rimeward.page.NightCsv;
import rimeward.page.NightJson;
import rimeward.page.NightReport;
import rimeward.page.NightSpan;
import rimeward.page.NightsJson;
import rimeward.page.Sight;
import rimeward.page.SizeAnswer;
import rimeward.page.StandingAlerts;
import rimeward.port.Past;
import rimeward.record.FrameRow;
import rimeward.record.Night;
import rimeward.record.Switched;
import rimeward.report.Paper;
import rimeward.site.Site;
import rimeward.sizing.Refused;

/** What is asked of the record. For the answering thread. */
final class History {
    private static final Pattern NIGHT =
            Pattern.compile("(/api/night/|/night/)(\\d{4}-\\d\\d-\\d\\d)(|\\.html|\\.csv)");
    private static final int NIGHTS = 400;
    private static final int ROWS = 20_000; // a day of frames is less than a tenth of that, unless a sensor flickers
    private static final int EVENTS = 5000;

    private final Site site;
    private final Past past;
    private final Recent recent;
    private final String reportPolicy = reportPolicy();
    private boolean remembered;

    /** @param recent what is not in the record yet */
    History(Site site, Past past, Recent recent) {
        this.site = site;
        this.past = past;
        this.recent = recent;
    }

    /** Once: the words of what stood before this run. */
    void rememberAlerts(StandingAlerts alerts) {
        if (remembered) {
            return;
        }
        remembered = true;
        long sinceMs = alerts.all().stream()
                .mapToLong(alert -> alert.sinceEpochS() * 1000)
                .min()
                .orElse(Long.MAX_VALUE);
        if (sinceMs < Long.MAX_VALUE) {
            try {
                alerts.remember(past.alerts(sinceMs, Long.MAX_VALUE, EVENTS));
            } catch (Past.Unreadable e) {
                remembered = false; // until then they keep their titles
            }
        }
    }

    /** @param sight empty before the first decision */
    Optional<Response> answer(Request request, Optional<Sight> sight) {
        String path = request.path();
        if (path.equals("/api/nights")) {
            return Optional.of(json(NightsJson.of(site, past.nights(NIGHTS), past.plans(NIGHTS))));
        }
        Matcher night = NIGHT.matcher(path);
        if (night.matches()) {
            return find(night.group(2)).flatMap(found -> night(night.group(1) + night.group(3), found));
        }
        return switch (path) {
            case "/api/day" -> sight.map(this::day);
            case "/api/hands" -> sight.map(this::hands);
            case "/api/size" -> Optional.of(sheet(request.question()));
            default -> Optional.empty();
        };
    }

    private static Response json(String text) {
        return Response.json(200, text);
    }

    private Response day(Sight sight) {
        DayJson day = new DayJson(sight);
        eachOfLastDay(sight, day::add);
        return json(day.json());
    }

    private void eachOfLastDay(Sight sight, Consumer<FrameRow> taker) {
        long nowMs = sight.outcome().frame().tick().wall().epochMs();
        long fromMs = nowMs - DayJson.LENGTH_S * 1000L;
        long[] lastMs = {fromMs - 1};
        past.eachFrame(fromMs, nowMs + 1, ROWS, row -> {
            lastMs[0] = Math.max(lastMs[0], row.frame().tick().wall().epochMs());
            taker.accept(row);
        });
        recent.after(lastMs[0]).forEach(taker);
    }

    private Response sheet(String question) {
        try {
            return json(SizeAnswer.json(site, Fields.of(question), past.nights(NIGHTS)));
        } catch (Refused e) {
            return Response.refusal(422, e.getMessage() + "");
        }
    }

    private Response hands(Sight sight) {
        MachineDay day = new MachineDay(site);
        eachOfLastDay(sight, day::add);
        return json(HandsJson.of(sight, day));
    }

    private Optional<Response> night(String kind, Night night) {
        NightSpan span = NightSpan.of(night.evening(), site.zone());
        return switch (kind) {
            case "/api/night/" -> Optional.of(inFull(night, span));
            case "/night/.html" -> Optional.of(report(night, span));
            case "/night/.csv" -> Optional.of(table(span));
            default -> Optional.empty();
        };
    }

    private Response inFull(Night night, NightSpan span) {
        NightJson told = new NightJson(site, span, plan(span));
        eachOf(span, told::add);
        return json(told.json(night, switches(span), alerts(span)));
    }

    private Response report(Night night, NightSpan span) {
        NightReport report = new NightReport(site, span, plan(span));
        eachOf(span, report::add);
        String html = report.html(night, switches(span), alerts(span));
        return Response.of(200, "text/html; charset=utf-8", ByteBuffer.wrap(html.getBytes(UTF_8)))
                .with("Content-Security-Policy", reportPolicy)
                .with("Cache-Control", "no-store");
    }

    private Response table(NightSpan span) {
        NightCsv table = new NightCsv(site);
        eachOf(span, table::add);
        String name = site.id() + "-" + span.evening() + ".csv";
        return Response.of(
                        200,
                        "text/csv; charset=utf-8",
                        ByteBuffer.wrap(table.text().getBytes(UTF_8)))
                .with("Content-Disposition", "attachment; filename=\"" + name + "\"")
                .with("Cache-Control", "no-store");
    }

    /** Styles may stand in it, and the one script of its own. */
    private static String reportPolicy() {
        try {
            byte[] sum =
                    MessageDigest.getInstance("SHA-256").digest(Paper.script().getBytes(UTF_8));
            return "default-src 'none'; style-src 'unsafe-inline'; script-src 'sha256-"
                    + Base64.getEncoder().encodeToString(sum)
                    + "'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e); // every JDK has it
        }
    }

    private Optional<PlanPromise> plan(NightSpan span) {
        return past.plans(NIGHTS).stream()
                .filter(each -> each.evening().equals(span.evening()))
                .findFirst();
    }

    private void eachOf(NightSpan span, Consumer<FrameRow> taker) {
        past.eachFrame(span.fromEpochS() * 1000, span.toEpochS() * 1000, ROWS, taker);
    }

    private List<Switched> switches(NightSpan span) {
        return past.switches(span.fromEpochS() * 1000, span.toEpochS() * 1000, EVENTS);
    }

    private List<Alert> alerts(NightSpan span) {
        return past.alerts(span.fromEpochS() * 1000, span.toEpochS() * 1000, EVENTS);
    }

    private Optional<Night> find(String date) {
        try {
            LocalDate evening = LocalDate.parse(date);
            List<Night> all = past.nights(NIGHTS);
            return all.stream().filter(night -> night.evening().equals(evening)).findFirst();
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }
}
