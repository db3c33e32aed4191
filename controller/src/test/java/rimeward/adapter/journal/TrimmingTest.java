package rimeward.adapter.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rimeward.record.FrameRow;

/** A file that is two winters old stays within its limits. */
class TrimmingTest {
    private static final long DAY_MS = 86_400_000;
    private static final long NOW_MS = 20_000 * DAY_MS;

    @TempDir
    Path folder;

    private Connection open;

    @BeforeEach
    void aFileWithOneFrame() throws SQLException {
        open = Database.open(folder.resolve("record.db"), JournalLimits.usual());
        Rows.frame(open, FrameRow.of(new Tunnel().next().stepped().outcome(), false));
    }

    @AfterEach
    void close() throws SQLException {
        open.close();
    }

    /** Copies of that one frame, a minute apart. */
    private void frames(int change, long fromMs, int count) throws SQLException {
        List<String> columns = new ArrayList<>();
        try (var names = open.createStatement().executeQuery("SELECT name FROM pragma_table_info('frame')")) {
            while (names.next()) {
                columns.add(names.getString(1));
            }
        }
        columns.removeAll(List.of("id", "at_ms", "change"));
        String others = String.join(", ", columns);
        try (PreparedStatement copy = open.prepareStatement("INSERT INTO frame (at_ms, change, " + others
                + ") WITH RECURSIVE n(i) AS (SELECT 0 UNION ALL SELECT i + 1 FROM n WHERE i + 1 < ?) SELECT ? + i * 60000, ?, "
                + others + " FROM n, (SELECT * FROM frame LIMIT 1)")) {
            copy.setInt(1, count);
            copy.setLong(2, fromMs);
            copy.setInt(3, change);
            copy.executeUpdate();
        }
    }

    private void trim(JournalLimits limits) throws SQLException {
        Database.run(open, "DELETE FROM frame WHERE id = 1"); // the pattern
        Trimming.at(open, limits, NOW_MS);
    }

    private int count(String where) throws SQLException {
        return Schema.number(open, "SELECT count(*) FROM frame WHERE " + where);
    }

    @Test
    void afterAMonthOneMinuteInTenAndEveryChangeStay() throws SQLException {
        frames(0, NOW_MS - 40 * DAY_MS, 1000);
        frames(1, NOW_MS - 40 * DAY_MS, 30);
        frames(0, NOW_MS - 2 * DAY_MS, 1000);
        trim(JournalLimits.usual());
        assertThat(count("at_ms < " + (NOW_MS - 30 * DAY_MS) + " AND change = 0"))
                .isEqualTo(100);
        assertThat(count("change = 1")).isEqualTo(30);
        assertThat(count("at_ms > " + (NOW_MS - 3 * DAY_MS))).isEqualTo(1000);
    }

    @Test
    void afterThirteenMonthsNoFrameStays() throws SQLException {
        frames(1, NOW_MS - 401 * DAY_MS, 100);
        frames(1, NOW_MS - 399 * DAY_MS, 100);
        trim(JournalLimits.usual());
        assertThat(count("1")).isEqualTo(100);
    }

    @Test
    void whenThereAreTooManyMinutesGoBeforeChanges() throws SQLException {
        JournalLimits few = new JournalLimits(600_000, 4096, 30, 400, 100, 800, 100_000);
        frames(1, NOW_MS - 2 * DAY_MS, 50);
        frames(0, NOW_MS - DAY_MS, 300);
        trim(few);
        assertThat(count("change = 0")).isEqualTo(100);
        assertThat(count("change = 1")).as("twice as many rows back").isZero();
        frames(1, NOW_MS, 150);
        Trimming.at(open, few, NOW_MS);
        assertThat(count("change = 0")).isZero();
        assertThat(count("change = 1")).isEqualTo(150);
    }
}
