package rimeward.adapter.web;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.nio.ByteBuffer;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rimeward.core.outlook.PlanPromise;
import rimeward.page.DayJson;
import rimeward.page.HandsJson;
import rimeward.page.MachineDay;
import rimeward.page.NightCsv;
import rimeward.page.NightJson;
import rimeward.page.NightSpan;
import rimeward.page.NightsJson;
import rimeward.page.Sight;
import rimeward.page.StandingAlerts;
import rimeward.port.Past;
import rimeward.record.FrameRow;
import rimeward.record.Night;
import rimeward.site.Site;

/** What is asked of the record. For the answering thread. */
final class History {
    private static final Pattern NIGHT =
            Pattern.compile("/api/night/(\\d{4}-\\d\\d-\\d\\d)|/night/(\\d{4}-\\d\\d-\\d\\d)\\.csv");
    private static final int NIGHTS = 400;
    private static final int ROWS = 20_000; // a day of frames is less than a tenth of that, unless a sensor flickers
    private static final int EVENTS = 5000;

    private final Site site;
    private final Past past;
    private final Recent recent;
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
    Optional<Response> answer(String path, Optional<Sight> sight) {
        if (path.equals("/api/nights")) {
            return Optional.of(json(NightsJson.of(site, past.nights(NIGHTS), past.plans(NIGHTS))));
        }
        Matcher night = NIGHT.matcher(path);
        if (night.matches()) {
            return night.group(1) == null ? csv(night.group(2)) : night(night.group(1));
        }
        return switch (path) {
            case "/api/day" -> sight.map(this::day);
            case "/api/hands" -> sight.map(this::hands);
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

    private Response hands(Sight sight) {
        MachineDay day = new MachineDay(site);
        eachOfLastDay(sight, day::add);
        return json(HandsJson.of(sight, day));
    }

    private Optional<Response> night(String date) {
        Optional<Night> night = find(date);
        if (night.isEmpty()) {
            return Optional.empty();
        }
        NightSpan span = NightSpan.of(night.get().evening(), site.zone());
        Optional<PlanPromise> plan = past.plans(NIGHTS).stream()
                .filter(each -> each.evening().equals(span.evening()))
                .findFirst();
        NightJson told = new NightJson(site, span, plan);
        long fromMs = span.fromEpochS() * 1000;
        long toMs = span.toEpochS() * 1000;
        past.eachFrame(fromMs, toMs, ROWS, told::add);
        return Optional.of(
                json(told.json(night.get(), past.switches(fromMs, toMs, EVENTS), past.alerts(fromMs, toMs, EVENTS))));
    }

    private Optional<Response> csv(String date) {
        return find(date).map(night -> {
            NightSpan span = NightSpan.of(night.evening(), site.zone());
            NightCsv table = new NightCsv(site);
            past.eachFrame(span.fromEpochS() * 1000, span.toEpochS() * 1000, ROWS, table::add);
            return Response.of(
                            200,
                            "text/csv; charset=utf-8",
                            ByteBuffer.wrap(table.text().getBytes(UTF_8)))
                    .with("Content-Disposition", "attachment; filename=\"" + site.id() + "-" + date + ".csv\"")
                    .with("Cache-Control", "no-store");
        });
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
