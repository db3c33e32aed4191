package rimeward.app;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rimeward.adapter.journal.RecordFile;
import rimeward.core.order.FloorOrder;
import rimeward.core.outlook.Outlook;
import rimeward.core.reading.WallTime;
import rimeward.planning.Evening;
import rimeward.record.DamagedState;
import rimeward.record.FrameRow;
import rimeward.record.SavedState;
import rimeward.service.Restart;
import rimeward.site.RelaySet;
import rimeward.site.Site;

/**
 * The tunnel as its record last saw it.
 *
 * @param outlook what control knew of the night
 */
record RecordedEvening(Evening evening, Outlook outlook) {
    /** An older frame says nothing of now, s. Own choice. */
    private static final long STALE_S = 3600;

    private static final long DAY_S = 86_400;

    /** Empty where the record has no frame of the last hour. */
    static Optional<RecordedEvening> of(Path record, Site settings, long nowS) {
        if (!Files.isRegularFile(record)) {
            return Optional.empty();
        }
        List<FrameRow> day = new ArrayList<>();
        RecordFile.eachFrameSince(record, (nowS - DAY_S) * 1000, row -> {
            if (Evening.isOf(row, settings) && epochS(row) <= nowS) {
                day.add(row);
            }
        });
        if (day.isEmpty() || epochS(day.get(day.size() - 1)) < nowS - STALE_S) {
            return Optional.empty();
        }
        FrameRow newest = day.get(day.size() - 1);
        Optional<SavedState> saved = saved(record);
        Site site = saved.map(state -> Restart.standing(state, settings, new WallTime(nowS * 1000, true))
                        .floor())
                .flatMap(floor -> floor instanceof FloorOrder.Asked asked
                        ? Optional.of(settings.withFloor(asked.floorC()))
                        : Optional.empty())
                .orElse(settings);
        RelaySet down = saved.map(state -> standDowns(state, site)).orElse(RelaySet.none());
        return Optional.of(new RecordedEvening(Evening.of(day, newest, site, down), newest.outlook()));
    }

    private static Optional<SavedState> saved(Path record) {
        try {
            return RecordFile.state(record).map(SavedState::parse);
        } catch (DamagedState e) {
            return Optional.empty(); // the service says so at its next start
        }
    }

    private static long epochS(FrameRow row) {
        return row.frame().tick().wall().epochS();
    }

    private static RelaySet standDowns(SavedState state, Site site) {
        boolean sameMachines = state.machines().equals(site.machineIds());
        return sameMachines
                ? state.guard().standDowns().machines().or(state.failures().failed())
                : RelaySet.none();
    }
}
