package rimeward.sim.app;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Which program this is: its version and, where it lies in a working copy and git is there, its commit. */
final class Build {
    private static final int COMMIT_DIGITS = 12;

    private Build() {}

    static String name() {
        String version = Optional.ofNullable(Build.class.getPackage().getImplementationVersion())
                .orElse("development");
        return commit().map(commit -> version + " " + commit).orElse(version);
    }

    /** With "-dirty" where files were changed since. */
    private static Optional<String> commit() {
        try {
            Path program = Path.of(Build.class
                    .getProtectionDomain()
                    .getCodeSource()
                    .getLocation()
                    .toURI());
            Path folder = program.toAbsolutePath().getParent();
            if (folder == null) {
                return Optional.empty();
            }
            Process git = new ProcessBuilder(List.of(
                            "git", "describe", "--always", "--dirty", "--exclude=*", "--abbrev=" + COMMIT_DIGITS))
                    .directory(folder.toFile())
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            String said = new String(git.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip();
            return git.waitFor() == 0 && !said.isEmpty() ? Optional.of(said) : Optional.empty();
        } catch (IOException | URISyntaxException e) {
            return Optional.empty(); // no git, or not from a file: the version has to do
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return Optional.empty();
        }
    }
}
