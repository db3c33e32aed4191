package rimeward.sim.app;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import rimeward.adapter.config.BadSettings;
import rimeward.adapter.journal.BadRecord;
import rimeward.sim.scenario.BadInput;

/** Entry point of the simulator: its subcommands are added as they come to exist. */
@Command(
        name = "rimeward-sim",
        mixinStandardHelpOptions = true,
        subcommands = {ReplayCommand.class, SweepCommand.class, LiveCommand.class, FitCommand.class},
        description = "Runs the controller against a simulated tunnel, in recorded weather.")
public final class Main implements Runnable {

    @Spec
    private CommandSpec spec;

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }

    /** The command line, with what cannot be had told as sentences and answered with exit code 2. */
    static CommandLine commandLine() {
        return new CommandLine(new Main()).setExecutionExceptionHandler((failure, command, parsed) -> {
            if (failure instanceof BadInput || failure instanceof BadSettings || failure instanceof BadRecord) {
                command.getErr().println(failure.getMessage());
                return CommandLine.ExitCode.USAGE;
            }
            throw failure;
        });
    }

    public static void main(String[] args) {
        // Newer JDKs hand out a console even where output goes to a file, and then a progress line would go there too.
        System.setProperty("jdk.console", "java.base");
        CommandLine commandLine = commandLine().setOut(utf8(FileDescriptor.out)).setErr(utf8(FileDescriptor.err));
        System.exit(commandLine.execute(args));
    }

    /** °C comes out right whatever the machine's own character set. */
    private static PrintWriter utf8(FileDescriptor stream) {
        return new PrintWriter(new FileOutputStream(stream), true, StandardCharsets.UTF_8);
    }
}
