package rimeward.page;

import java.time.Instant;
import java.util.Locale;
import java.util.OptionalDouble;
import rimeward.record.FrameRow;
import rimeward.site.Machine;
import rimeward.site.Sensor;
import rimeward.site.Site;

/** A night's kept frames as a table for other programs: what was believed, and which relays were closed. */
public final class NightCsv {
    private final Site site;
    private final StringBuilder text = new StringBuilder();

    public NightCsv(Site site) {
        this.site = site;
        text.append("time");
        for (Sensor sensor : site.sensors()) {
            text.append(',').append(sensor.id()).append(" °C");
            text.append(sensor.hasHumidity() ? "," + sensor.id() + " %" : "");
        }
        for (Machine machine : site.machines()) {
            text.append(',').append(machine.id()).append(" on");
        }
        text.append(",warm duty,change\n");
    }

    /** Takes a kept frame; in the order they were taken. */
    public void add(FrameRow row) {
        text.append(Instant.ofEpochMilli(Intervals.epochMs(row)));
        boolean same = row.airVerdicts().size() == site.sensors().size();
        for (int i = 0; i < site.sensors().size(); i++) {
            cell(same ? row.believedAirC(i) : OptionalDouble.empty());
            if (site.sensors().get(i).hasHumidity()) {
                cell(same ? row.believedRhPercent(i) : OptionalDouble.empty());
            }
        }
        for (int i = 0; i < site.machines().size(); i++) {
            text.append(row.closed().has(i) ? ",1" : ",0");
        }
        text.append(',').append(Members.word(row.holder())).append(row.change() ? ",1\n" : ",0\n");
    }

    private void cell(OptionalDouble value) {
        text.append(',');
        value.ifPresent(known -> text.append(String.format(Locale.ROOT, "%.2f", known)));
    }

    public String text() {
        return text.toString();
    }
}
