package rimeward.app;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Entry point of the controller: its subcommands are added as they come to exist. */
@Command(
        name = "rimeward",
        mixinStandardHelpOptions = true,
        description = "Keeps an unheated film tunnel above the plants' floor, dry and cheap.")
public final class Main implements Runnable {

    @Spec
    private CommandSpec spec;

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }

    public static void main(String[] args) {
        System.exit(new CommandLine(new Main()).execute(args));
    }
}
