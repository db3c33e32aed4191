package rimeward.sim.app;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.ExitCode;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rimeward.adapter.config.SiteSettings;
import rimeward.adapter.journal.RecordFile;
import rimeward.core.tunnel.Lesson;
import rimeward.core.tunnel.LessonText;
import rimeward.core.tunnel.Moisture;
import rimeward.core.tunnel.MoistureFit;
import rimeward.core.tunnel.TunnelEstimate;
import rimeward.core.tunnel.TunnelFit;
import rimeward.record.DampQuarters;
import rimeward.record.Stretches;
import rimeward.site.Site;

/** {@code rimeward-sim fit}: what a record teaches of its tunnel. */
@Command(
        name = "fit",
        mixinStandardHelpOptions = true,
        description = {
            "Learns from a record how its tunnel loses and keeps heat, and how well that is known.",
            "A record that was exported is made one again by: rimeward record FILE import DIR"
        },
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:learned", "1:the record does not tell enough yet", "2:wrong usage, bad settings or record"})
final class FitCommand implements Callable<Integer> {
    private static final int NOT_YET = 1;

    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "RECORD", description = "the record, as /var/lib/rimeward/record.db")
    private Path record = Path.of("record.db"); // always replaced: the argument is required

    @Option(
            names = "--settings",
            paramLabel = "FILE",
            description = "settings that the service ran with (default: ${DEFAULT-VALUE})")
    private Path settings = Path.of("config", "tunnel.toml");

    @Override
    public Integer call() {
        Site site = SiteSettings.read(settings);
        Stretches stretches = new Stretches(site);
        DampQuarters damp = new DampQuarters(site);
        RecordFile.eachFrameSince(record, 0, row -> {
            stretches.add(row);
            damp.add(row);
        });
        Lesson lesson = TunnelFit.of(site, stretches.found());
        TunnelEstimate assumed = TunnelEstimate.assumed(site);
        TunnelEstimate warm = lesson instanceof Lesson.Learned learned ? learned.estimate() : assumed;
        Moisture moisture = MoistureFit.of(site, warm, damp.found());
        spec.commandLine().getOut().print(LessonText.sheet(lesson, site) + LessonText.damp(moisture, assumed));
        spec.commandLine().getOut().flush();
        return lesson instanceof Lesson.Learned ? ExitCode.OK : NOT_YET;
    }
}
