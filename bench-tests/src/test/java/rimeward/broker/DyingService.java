package rimeward.broker;

import java.nio.file.Path;
import rimeward.adapter.config.SiteSettings;
import rimeward.alert.Alert;
import rimeward.assembly.Audience;
import rimeward.assembly.Service;
import rimeward.core.Stepped;
import rimeward.core.decision.DutyLaw;
import rimeward.core.order.Answer;
import rimeward.site.Site;

/**
 * The whole service in a process of its own, until somebody kills it. Prints a line for each alert that is in the record by then: its id and
 * what became of it.
 *
 * <p>Arguments: the settings, the data folder, the broker's folder and port, the time of day to begin with in s, and how many ticks apart
 * the sensors fail; 0 for never.
 */
final class DyingService implements Audience {
    private DyingService() {}

    public static void main(String[] args) {
        Site settings = SiteSettings.read(Path.of(args[0]));
        Site site = settings.with(Mosquitto.settings(Path.of(args[2]), settings.id(), Integer.parseInt(args[3])));
        FailingSensors around = new FailingSensors(site, Long.parseLong(args[4]) * 1000, Long.parseLong(args[5]));
        new Service(site, new DutyLaw(), Path.of(args[1]), around, new DyingService(), System::nanoTime).run();
    }

    @Override
    public void says(String line) {}

    @Override
    public void decided(Stepped stepped) {}

    @Override
    public void answered(Answer answer) {}

    @Override
    public void told(Alert alert) {
        System.out.println(KilledServiceTest.MARK + Arrived.words(alert));
    }
}
