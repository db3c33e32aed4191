package rimeward.assembly;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.LongSupplier;
import rimeward.alert.Alert;
import rimeward.alert.AlertBoard;
import rimeward.core.ControlCycle;
import rimeward.core.Stepped;
import rimeward.core.decision.ControlLaw;
import rimeward.core.order.Answer;
import rimeward.core.order.FloorOrder;
import rimeward.core.order.HandedForecast;
import rimeward.core.order.Order;
import rimeward.core.order.Standing;
import rimeward.core.outlook.Outlook;
import rimeward.core.tunnel.LossStanding;
import rimeward.planning.Planner;
import rimeward.port.Forecasts;
import rimeward.port.Journal;
import rimeward.port.Orders;
import rimeward.record.DamagedState;
import rimeward.record.SavedState;
import rimeward.service.ControlLoop;
import rimeward.service.Grower;
import rimeward.service.NightsAhead;
import rimeward.service.OrderQueue;
import rimeward.service.Restart;
import rimeward.service.StateKeeper;
import rimeward.service.Surroundings;
import rimeward.site.Site;

/**
 * The whole service from a start to an end, for as long as there are ticks. It takes up where the record says that the last one left
 * off, and lets go of the relays before it waits for any disk.
 */
public final class Service {
    /** The record's file in the data folder. */
    public static final String RECORD = "record.db";

    private final Site site;
    private final ControlLaw law;
    private final Path file;
    private final Surroundings around;
    private final Showing page;
    private final Messenger audience;
    private final Orders orders;
    private final OrderQueue byMessage = new OrderQueue();
    private final LongSupplier nanoTime;
    private final ControlCycle control;
    private boolean knownSaid; // the loop's thread
    private final AlertBoard board;
    private final AtomicReference<LossStanding> heatLoss = new AtomicReference<>(LossStanding.UNKNOWN);

    /**
     * @param data folder for the record
     * @param law under which the guard has the last word
     * @param nanoTime monotonic time of this machine, ns: {@code System.nanoTime}, also where the tunnel's time is simulated
     */
    public Service(
            Site site, ControlLaw law, Path data, Surroundings around, Audience audience, LongSupplier nanoTime) {
        this(site, law, data, around, Orders.none(), audience, nanoTime);
    }

    /** @param orders what the grower asks for meanwhile */
    public Service(
            Site site,
            ControlLaw law,
            Path data,
            Surroundings around,
            Orders orders,
            Audience audience,
            LongSupplier nanoTime) {
        this.site = site;
        this.law = law;
        file = data.resolve(RECORD);
        this.around = around;
        this.orders = orders;
        page = new Showing(audience);
        this.audience = new Messenger(page);
        this.nanoTime = nanoTime;
        control = new ControlCycle(site, law);
        board = new AlertBoard(site, heatLoss::get);
    }

    /** Runs until there are no more ticks; what goes wrong in control itself is thrown. */
    public void run() {
        Clock clock =
                Clock.fixed(Instant.ofEpochMilli(around.now().epochMs()), ZoneOffset.UTC); // names a file, no more
        try (Recording recording = new Recording(site, file, clock, audience);
                Showing shown = page;
                Messenger messenger = audience) {
            shown.begin(site, file, this::asked, recording::isFailing, messenger::isFailing, nanoTime);
            messenger.begin(site, recording, this::asked, around.handedReadings(), nanoTime);
            control(recording);
        }
    }

    private Planning planning(Recording recording, Forecasts forecasts, NightsAhead nights) {
        NightFindings findings = new NightFindings(site, recording, audience, nights, this::asked, heatLoss::set);
        return Planning.start(new Planner(site, forecasts, recording.past(), findings), audience);
    }

    private void control(Recording recording) {
        Optional<Planning> planning = Optional.empty();
        try {
            Optional<SavedState> saved = recording.stateAtStart().flatMap(this::parsed);
            Standing standing = saved.map(this::standing).orElse(Standing.NONE);
            Forecasts forecasts = around.forecasts();
            NightsAhead nights = new NightsAhead(forecasts, site);
            Planning begun = planning(recording, forecasts, nights);
            planning = Optional.of(begun);
            begun.hand(standing.forecast());
            Restart from = saved.map(this::resumed).orElseGet(() -> new Restart(control.start(), 0));
            double outageS = saved.map(SavedState::lastOutageS).orElse(0.0);
            saved.ifPresent(state -> page.resumes(state.alerts()));
            StateKeeper keeper = StateKeeper.of(site, law, around.boot(), outageS, state -> {
                recording.keep(state);
                page.kept(state);
            });
            new ControlLoop(
                            site,
                            control,
                            board,
                            around.ticker(from.elapsedMs()),
                            around.sensors(),
                            nights,
                            around.relays(),
                            new Heard(recording, begun),
                            keeper,
                            audience,
                            new Grower(this::orders, answer -> answered(answer, begun), standing),
                            around.health())
                    .run(from.state());
        } finally {
            around.letGo();
            planning.ifPresent(Planning::close);
        }
    }

    /** The record, and the planner beside it. */
    private record Heard(Recording recording, Planning planning) implements Journal {
        @Override
        public void record(Stepped stepped, List<Alert> alerts) {
            recording.record(stepped, alerts);
            planning.decided(stepped);
        }

        @Override
        public boolean isFailing() {
            return recording.isFailing();
        }

        @Override
        public int timesSetAside() {
            return recording.timesSetAside();
        }
    }

    /** On the loop's thread. */
    private void answered(Answer answer, Planning planning) {
        if (answer.order() instanceof Order.KnowTunnel) {
            if (!knownSaid || !answer.taken()) { // no grower asked, and each morning's news is the lesson's own
                audience.says(answer.text());
            }
            knownSaid = answer.taken();
            return;
        }
        if (answer.order() instanceof Order.PlanNow) {
            planning.ask();
        }
        if (answer.taken() && answer.order() instanceof Order.HandForecast handed) {
            planning.hand(
                    handed.outlook() instanceof Outlook.Night night
                            ? new HandedForecast.Night(night, planning.elapsedMs())
                            : HandedForecast.NONE);
        }
        audience.answered(answer);
    }

    /** On the line's thread, the page's or the planner's. */
    private void asked(Order order) {
        if (!byMessage.offer(order)) {
            audience.answered(new Answer(order, false, "Too much was asked for at once. Ask again."));
        }
    }

    private List<Order> orders() {
        List<Order> here = orders.take();
        List<Order> messages = byMessage.take();
        if (here.isEmpty()) {
            return messages;
        }
        List<Order> all = new ArrayList<>(here);
        all.addAll(messages);
        return all;
    }

    private Optional<SavedState> parsed(String text) {
        try {
            return Optional.of(SavedState.parse(text));
        } catch (DamagedState e) {
            audience.says("starts fresh. " + e.getMessage());
            return Optional.empty();
        }
    }

    private Standing standing(SavedState saved) {
        Standing standing = Restart.standing(saved, site, around.now());
        if (standing.floor() instanceof FloorOrder.Asked asked) {
            audience.says("holds the floor that was asked for, " + asked.floorC() + " °C, and not the settings' "
                    + site.floorC() + " °C");
        } else if (saved.standing().floor() instanceof FloorOrder.Asked asked) {
            audience.says("the floor that was asked for, " + asked.floorC()
                    + " °C, falls with the settings it was asked against: they have changed, and their " + site.floorC()
                    + " °C holds. Ask again if it should be another");
        }
        return standing;
    }

    private Restart resumed(SavedState saved) {
        boolean sameBoot = !around.boot().isEmpty() && around.boot().equals(saved.boot());
        board.resume(saved.alerts(), saved.pulse().elapsedMs(), sameBoot);
        long outageMs = Restart.outageMs(saved, around.now());
        audience.says("takes up where it left off; rest times go on, "
                + (outageMs > 0
                        ? outageMs / 1000 + " s after the last decision"
                        : "and the time between counts as none"));
        return new Restart(
                StateKeeper.restored(saved, site, law, control), saved.pulse().elapsedMs() + outageMs);
    }
}
