package rimeward.assembly;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.LongSupplier;
import org.jspecify.annotations.Nullable;
import rimeward.adapter.journal.RecordPast;
import rimeward.adapter.web.PageServer;
import rimeward.alert.Alert;
import rimeward.alert.AlertSlot;
import rimeward.core.Stepped;
import rimeward.core.order.Answer;
import rimeward.core.order.Order;
import rimeward.core.outlook.Alternatives;
import rimeward.core.outlook.NightPlan;
import rimeward.core.outlook.PastNight;
import rimeward.core.tunnel.Lesson;
import rimeward.page.Planned;
import rimeward.record.SavedState;
import rimeward.site.Page;
import rimeward.site.Site;

/**
 * Shows in a browser what the audience hears, where the settings say so; else no thread is begun. A page that cannot be served is said, and
 * control goes on.
 */
final class Showing implements Audience, AutoCloseable {
    private final Audience audience;
    private volatile @Nullable PageServer server;

    Showing(Audience audience) {
        this.audience = audience;
    }

    /**
     * Begins.
     *
     * @param record the record's file, in the folder for a token
     * @param orders takes what the grower asks for
     */
    void begin(
            Site site,
            Path record,
            Consumer<Order> orders,
            BooleanSupplier recordFailing,
            BooleanSupplier brokerFailing,
            LongSupplier nanoTime) {
        if (!(site.page() instanceof Page.Served page)) {
            return;
        }
        Path data = record.toAbsolutePath().getParent();
        try {
            PageServer.Sources sources = new PageServer.Sources(
                    data == null ? Path.of("/") : data,
                    new RecordPast(record),
                    orders,
                    recordFailing,
                    brokerFailing,
                    audience::says,
                    nanoTime);
            PageServer begun = PageServer.start(site, page, sources);
            server = begun;
            audience.says("the page is at " + begun.address());
        } catch (IOException | RuntimeException | LinkageError e) {
            audience.says("the page cannot be served at " + page.inWords(page.port())
                    + ", and control goes on without it: " + e.getMessage());
        }
    }

    private void show(Consumer<PageServer> what) {
        PageServer begun = server;
        if (begun != null) {
            what.accept(begun);
        }
    }

    void resumes(List<AlertSlot> alerts) {
        show(page -> page.resumes(alerts));
    }

    void kept(SavedState state) {
        show(page -> page.kept(state));
    }

    @Override
    public void planned(NightPlan plan, Alternatives others) {
        audience.planned(plan, others);
        show(page -> page.planned(new Planned(plan, others)));
    }

    @Override
    public void promised(NightPlan plan) {
        audience.promised(plan);
    }

    @Override
    public void learned(Lesson lesson) {
        audience.learned(lesson);
        show(page -> page.learned(lesson));
    }

    @Override
    public void reckoned(PastNight night) {
        audience.reckoned(night);
        show(page -> page.reckoned(night));
    }

    @Override
    public void says(String line) {
        audience.says(line);
    }

    @Override
    public void decided(Stepped stepped) {
        audience.decided(stepped);
        show(page -> page.decided(stepped));
    }

    @Override
    public void answered(Answer answer) {
        audience.answered(answer);
        show(page -> page.answered(answer));
    }

    @Override
    public void told(Alert alert) {
        audience.told(alert);
        show(page -> page.told(alert));
    }

    @Override
    public void close() {
        show(PageServer::close);
    }
}
