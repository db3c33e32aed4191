package rimeward.app;

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

/** Entry point of the controller: its subcommands are added as they come to exist. */
@Command(
        name = "rimeward",
        mixinStandardHelpOptions = true,
        subcommands = {
            CheckCommand.class,
            SizeCommand.class,
            RunCommand.class,
            TonightCommand.class,
            RecordCommand.class,
            ReleaseCommand.class,
            UnpublishCommand.class,
            WiringCommand.class
        },
        description = "Keeps an unheated film tunnel above the plants' floor, dry and cheap.")
public final class Main implements Runnable {

    @Spec
    private CommandSpec spec;

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }

    /** The command line, with refused settings told as sentences and answered with exit code 2. */
    static CommandLine commandLine() {
        return answering(new CommandLine(new Main()));
    }

    static CommandLine answering(CommandLine commandLine) {
        return commandLine.setExecutionExceptionHandler((failure, command, parsed) -> {
            if (failure instanceof BadSettings || failure instanceof BadRecord) {
                command.getErr().println(failure.getMessage());
                return CommandLine.ExitCode.USAGE;
            }
            throw failure;
        });
    }

    public static void main(String[] args) {
        CommandLine commandLine = commandLine().setOut(utf8(FileDescriptor.out)).setErr(utf8(FileDescriptor.err));
        System.exit(commandLine.execute(args));
    }

    /** °C and − come out right whatever the machine's own character set. */
    private static PrintWriter utf8(FileDescriptor stream) {
        return new PrintWriter(new FileOutputStream(stream), true, StandardCharsets.UTF_8);
    }
}
