package rimeward.broker;

import java.util.Collections;
import rimeward.core.ControlCycle;
import rimeward.core.Stepped;
import rimeward.core.decision.DutyLaw;
import rimeward.core.outlook.Outlook;
import rimeward.core.reading.Frame;
import rimeward.core.reading.Reading;
import rimeward.core.reading.Senses;
import rimeward.core.reading.SensorReading;
import rimeward.core.reading.Signal;
import rimeward.core.reading.Tick;
import rimeward.core.reading.WallTime;
import rimeward.site.Site;

/** A first decision, with every sensor at 6 °C and 70 %. */
final class Decision {
    private static final long EPOCH_MS = 1_764_000_000_000L;

    private Decision() {}

    /** @param elapsedMs monotonic time, ms */
    static Stepped of(Site site, long elapsedMs) {
        SensorReading one = new SensorReading(new Reading.Value(6, 0), new Reading.Value(70, 0));
        Senses senses = new Senses(
                Collections.nCopies(site.sensors().size(), one),
                Collections.nCopies(site.machines().size(), Reading.NO_ANSWER),
                Signal.OFF,
                Signal.OFF);
        ControlCycle control = new ControlCycle(site, new DutyLaw());
        Frame frame = new Frame(new Tick(1, elapsedMs, new WallTime(EPOCH_MS, true)), senses);
        return control.step(control.start(), frame, Outlook.NONE);
    }
}
