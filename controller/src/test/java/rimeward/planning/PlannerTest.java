package rimeward.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import rimeward.alert.Alert;
import rimeward.core.ControlCycle;
import rimeward.core.ControlState;
import rimeward.core.Stepped;
import rimeward.core.decision.DutyLaw;
import rimeward.core.order.HandedForecast;
import rimeward.core.outlook.Alternatives;
import rimeward.core.outlook.Course;
import rimeward.core.outlook.Forecast;
import rimeward.core.outlook.ForecastErrors;
import rimeward.core.outlook.NightPlan;
import rimeward.core.outlook.Outlook;
import rimeward.core.outlook.PastNight;
import rimeward.core.outlook.PlanPromise;
import rimeward.core.reading.Frame;
import rimeward.core.reading.Reading;
import rimeward.core.reading.Tick;
import rimeward.core.reading.WallTime;
import rimeward.core.tunnel.Lesson;
import rimeward.core.tunnel.LossStanding;
import rimeward.fixture.Frames;
import rimeward.fixture.Sites;
import rimeward.port.Forecasts;
import rimeward.port.Past;
import rimeward.record.FrameRow;
import rimeward.record.Night;
import rimeward.record.Switched;
import rimeward.site.Site;

/** Days of a tunnel at 6 °C; outside it falls from 4 °C at two in the afternoon to -4 °C at two in the morning, and rises again. */
class PlannerTest {
    private static final int MINUTE_S = 60;
    private static final int HOUR_S = 3600;

    private final Site site = Sites.unmetered();
    private final Frames frames = Frames.steady(6, 70);
    private final ControlCycle cycle = new ControlCycle(site, new DutyLaw());
    private final Book book = new Book();
    private final Found found = new Found();
    private Optional<Forecast> forecast = Optional.empty();
    private final Planner planner = new Planner(site, new Sky(), book, found);
    private ControlState state = cycle.start();
    private long nowS;
    private long number;

    private static double outsideC(long epochS) {
        double hour = Math.floorMod(epochS, 24 * HOUR_S) / (double) HOUR_S;
        double sinceColdestH = Math.abs(hour - 2);
        return -4 + 8 * Math.min(sinceColdestH, 24 - sinceColdestH) / 12;
    }

    /** A minute each, up to a time of day, and the next day if that is past; the planner looks every ten. */
    private void until(int hour, int minute) {
        do {
            number++;
            frames.jitter(0.01 * (number % 2));
            frames.outside(outsideC(nowS + MINUTE_S));
            Frame frame = frames.after(MINUTE_S);
            nowS = frame.tick().wall().epochS();
            Stepped stepped = cycle.step(state, frame, Outlook.NONE);
            state = stepped.next();
            book.add(FrameRow.of(stepped.outcome(), false));
            if (number % 10 == 0) {
                planner.look(stepped, false);
            }
        } while (Math.floorMod(nowS, 24 * HOUR_S) != hour * HOUR_S + minute * MINUTE_S);
    }

    @Test
    void fromNoonOnTheNightIsPlannedAnewEachQuarterOfAnHour() {
        until(9, 0);
        found.plans.clear();
        until(11, 50);
        assertThat(found.plans).isEmpty();
        until(18, 0);
        assertThat(found.plans).hasSizeBetween(17, 24); // six hours of quarters, looked at each ten minutes
        long noonS = Instant.ofEpochSecond(nowS)
                .atZone(ZoneOffset.UTC)
                .toLocalDate()
                .plusDays(1)
                .atTime(12, 0)
                .toEpochSecond(ZoneOffset.UTC);
        assertThat(found.last().endEpochS()).isBetween(noonS - 900, noonS);
    }

    @Test
    void betweenTheSunsNoonAndTheClocksItIsDayStill() {
        until(11, 30); // in November the sun's noon is at a quarter to twelve here
        found.plans.clear();
        until(11, 59);
        assertThat(found.plans).isEmpty();
        assertThat(found.said).isEmpty();
    }

    @Test
    void aFreshForecastAndTheGrowersOneArePlannedByAtOnce() {
        until(14, 0);
        assertThat(found.last().basis().isGuess()).isTrue();
        forecast = Optional.of(forecast("the hill", -9));
        until(14, 10);
        assertThat(found.last().basis().inWords()).contains("the forecast of the hill");
        assertThat(found.last().lowestOutsideC().value()).isBetween(-11.0, -7.0);
        assertThat(found.kept).containsKey(Remembered.FORECAST);
        planner.handed(new HandedForecast.Night(
                new Outlook.Night(1, -15, 1, 60_000), frames.after(0).tick().elapsedMs()));
        until(14, 20);
        assertThat(found.last().lowestOutsideC().value()).isCloseTo(-15, within(0.5));
    }

    @Test
    void whatIsPromisedIsTheLastPlanBeforeDark() {
        until(14, 0);
        found.promises.clear();
        until(23, 0);
        PlanPromise last = found.promises.get(found.promises.size() - 1);
        assertThat(Instant.ofEpochSecond(last.madeEpochS())
                        .atZone(ZoneOffset.UTC)
                        .getHour())
                .isEqualTo(17); // the place is not known: the sun sets at six
        assertThat(last.evening())
                .isEqualTo(Instant.ofEpochSecond(nowS).atZone(ZoneOffset.UTC).toLocalDate());
    }

    @Test
    void inTheMorningTheNightIsReckonedOnce() {
        until(14, 0);
        frames.inside(4.2); // heat is called for, and does nothing
        for (int machine = 0; machine < site.machines().size(); machine++) {
            frames.power(machine, Reading.NO_ANSWER); // no meter: what is closed draws what its plate says
        }
        found.past.clear();
        until(23, 50);
        assertThat(found.past).isEmpty();
        until(13, 50);
        assertThat(found.past).hasSize(1);
        LocalDate yesterday =
                Instant.ofEpochSecond(nowS).atZone(ZoneOffset.UTC).toLocalDate().minusDays(1);
        assertThat(found.past.get(0).evening()).isEqualTo(yesterday);
        assertThat(found.past.get(0).kWh()).isPositive();
    }

    @Test
    void ofANightWithAHoleNothingIsClaimed() {
        until(23, 0);
        book.rows.removeIf(row -> {
            long s = Math.floorMod(row.frame().tick().wall().epochS(), 24 * HOUR_S);
            return s > 20 * HOUR_S && s < 21 * HOUR_S;
        });
        until(13, 0);
        assertThat(found.past).isEmpty();
    }

    @Test
    void aForecastThatIsAlwaysTooWarmIsCorrected() {
        for (int day = 0; day < 6; day++) {
            until(12, 0);
            forecast = Optional.of(forecast("the hill", -1)); // three kelvin too warm
            until(20, 0);
        }
        ForecastErrors errors = Remembered.errors(book, "the hill");
        assertThat(errors.nights()).isBetween(4, 6);
        assertThat(errors.at(9 * HOUR_S, 1).biasK()).isBetween(-3.0, -1.0);
        assertThat(found.last().lowestOutsideC().value()).isLessThan(-2);
        assertThat(Remembered.errors(book, "another").nights()).isZero();
    }

    @Test
    void whenTheRecordCannotBeReadThatIsSaidAndTheNightIsPlannedAllTheSame() {
        book.fails = true;
        until(20, 0);
        assertThat(found.said).isNotEmpty().allMatch(line -> line.contains("control goes on"));
        assertThat(found.plans).isNotEmpty();
        assertThat(found.last().basis().tunnelNights()).isZero();
    }

    @Test
    void withoutATrustedClockNothingIsDue() {
        Frame frame = frames.after(MINUTE_S);
        Frame unset =
                new Frame(new Tick(1, 1000, new WallTime(frame.tick().wall().epochMs(), false)), frame.senses());
        planner.look(cycle.step(state, unset, Outlook.NONE), true);
        assertThat(found.plans).isEmpty();
        assertThat(found.lessons).isEmpty();
    }

    /** As the weather here, but with another lowest. */
    private Forecast forecast(String source, double lowestC) {
        List<Forecast.Point> points = new ArrayList<>();
        long fromS = nowS / HOUR_S * HOUR_S;
        for (int hour = 0; hour <= 40; hour++) {
            long s = fromS + (long) hour * HOUR_S;
            points.add(new Forecast.Point(
                    s,
                    lowestC + 4 + outsideC(s),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty()));
        }
        return new Forecast(source, fromS, points);
    }

    private final class Sky implements Forecasts {
        @Override
        public Optional<Forecast> newest() {
            return forecast;
        }

        @Override
        public void askAnew() {}

        @Override
        public Optional<String> trouble() {
            return Optional.empty();
        }
    }

    /** A record in memory that may fail. */
    private final class Book implements Past {
        private final List<FrameRow> rows = new ArrayList<>();
        private boolean fails;

        void add(FrameRow row) {
            rows.add(row);
        }

        private void check() {
            if (fails) {
                throw new IllegalStateException("the disk is gone");
            }
        }

        @Override
        public void eachFrame(long fromMs, long toMs, int most, Consumer<FrameRow> taker) {
            check();
            rows.stream()
                    .filter(row -> row.frame().tick().wall().epochMs() >= fromMs)
                    .forEach(taker);
        }

        @Override
        public List<Night> nights(int most) {
            check();
            return List.of();
        }

        @Override
        public List<PlanPromise> plans(int most) {
            check();
            return List.of();
        }

        @Override
        public List<Switched> switches(long fromMs, long toMs, int most) {
            return List.of();
        }

        @Override
        public List<Alert> alerts(long fromMs, long toMs, int most) {
            return List.of();
        }

        @Override
        public Optional<String> learned(String name) {
            check();
            return Optional.ofNullable(found.kept.get(name));
        }
    }

    private static final class Found implements Findings {
        private final List<NightPlan> plans = new ArrayList<>();
        private final List<PlanPromise> promises = new ArrayList<>();
        private final List<Lesson> lessons = new ArrayList<>();
        private final List<PastNight> past = new ArrayList<>();
        private final List<String> said = new ArrayList<>();
        private final Map<String, String> kept = new LinkedHashMap<>();

        NightPlan last() {
            return plans.get(plans.size() - 1);
        }

        @Override
        public void planned(NightPlan plan, Alternatives others) {
            plans.add(plan);
        }

        @Override
        public void promised(PlanPromise promise) {
            promises.add(promise);
        }

        @Override
        public void learned(Lesson lesson) {
            lessons.add(lesson);
        }

        @Override
        public void heatLoss(LossStanding standing) {}

        @Override
        public void expects(Course course, long nowEpochS) {}

        @Override
        public void keeps(String name, String text) {
            kept.put(name, text);
        }

        @Override
        public void reckoned(PastNight night) {
            past.add(night);
        }

        @Override
        public void says(String line) {
            said.add(line);
        }
    }
}
