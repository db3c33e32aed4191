package rimeward.sim.app;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import rimeward.sim.report.ReportPage;
import rimeward.sim.report.StillPicture;
import rimeward.sim.report.SummaryJson;
import rimeward.sim.report.SwitchesCsv;
import rimeward.sim.report.TraceCsv;
import rimeward.sim.run.Comparison;
import rimeward.sim.scenario.BadInput;

/** What a replay leaves behind. */
final class ResultFiles {
    static final String PAGE = "report.html";

    private ResultFiles() {}

    /** Writes all of it, over what was there before; returns the folder. */
    static Path write(Comparison comparison, Path folder) throws BadInput {
        try {
            Files.createDirectories(folder);
            Files.writeString(folder.resolve("summary.json"), SummaryJson.of(comparison));
            Files.writeString(folder.resolve("switches.csv"), SwitchesCsv.of(comparison));
            Files.writeString(folder.resolve("picture.svg"), StillPicture.of(comparison));
            Files.writeString(folder.resolve(PAGE), ReportPage.of(comparison, version()));
            try (BufferedWriter trace = Files.newBufferedWriter(folder.resolve("trace.csv"))) {
                TraceCsv.write(comparison, trace);
            }
            return folder;
        } catch (IOException e) {
            throw new BadInput(
                    "cannot write the report into " + folder + " (" + e.getMessage()
                            + "); choose another with --report",
                    e);
        }
    }

    private static String version() {
        return Optional.ofNullable(ResultFiles.class.getPackage().getImplementationVersion())
                .orElse("development");
    }
}
