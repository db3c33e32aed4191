package rimeward.adapter.web;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import rimeward.adapter.journal.JournalLimits;
import rimeward.adapter.journal.RecordPast;
import rimeward.adapter.journal.SqliteJournal;
import rimeward.alert.Alert;
import rimeward.alert.AlertBoard;
import rimeward.core.ControlCycle;
import rimeward.core.ControlState;
import rimeward.core.Stepped;
import rimeward.core.decision.DutyLaw;
import rimeward.core.order.Order;
import rimeward.core.outlook.Outlook;
import rimeward.core.reading.Frame;
import rimeward.site.Page;
import rimeward.site.Site;

/** A page with a real record behind it, and control that goes as fast as the test says. */
final class ServedPage implements AutoCloseable {
    static final String RECORD = "record.db";

    final List<String> said = Collections.synchronizedList(new ArrayList<>());
    final List<Order> asked = Collections.synchronizedList(new ArrayList<>());
    final Path folder;
    final SqliteJournal journal;
    final PageServer server;

    private final ControlCycle control;
    private final AlertBoard board;
    private ControlState state;

    ServedPage(Site site, Page.Served page, Path folder) throws IOException {
        this.folder = folder;
        control = new ControlCycle(site, new DutyLaw());
        board = new AlertBoard(site);
        state = control.start();
        Path file = folder.resolve(RECORD);
        journal = SqliteJournal.open(
                file,
                site,
                ZoneOffset.UTC,
                Clock.fixed(Instant.EPOCH, ZoneOffset.UTC),
                JournalLimits.usual(),
                alert -> {},
                trouble -> {});
        server = PageServer.start(
                site,
                page,
                new PageServer.Sources(
                        folder,
                        new RecordPast(file),
                        asked::add,
                        () -> false,
                        () -> false,
                        said::add,
                        System::nanoTime));
    }

    /** One decision, recorded, told and shown. */
    Stepped decide(Frame frame) {
        Stepped stepped = control.step(state, frame, Outlook.NONE);
        state = stepped.next();
        List<Alert> alerts = board.after(stepped.outcome());
        journal.record(stepped, alerts);
        alerts.forEach(server::told);
        server.decided(stepped);
        return stepped;
    }

    String get(String path) throws IOException {
        return Wire.get(server.port(), path);
    }

    static String body(String answer) {
        return answer.substring(answer.indexOf("\r\n\r\n") + 4);
    }

    @Override
    public void close() {
        server.close();
        journal.close();
    }
}
