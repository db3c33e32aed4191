package rimeward.sim.app;

import java.io.PrintWriter;

/** One line on a terminal that says what is being done; nothing where output goes to a file. */
final class Progress {
    private static final String ERASE = "\r\u001B[K";

    private final PrintWriter err;

    @SuppressWarnings("SystemConsoleNull") // main asks for the console that is null where there is no terminal
    private final boolean onTerminal = System.console() != null;

    Progress(PrintWriter err) {
        this.err = err;
    }

    void show(String scenario, String law, int number, int of) {
        show(scenario + ": " + law + " (" + number + " of " + of + ") …");
    }

    void show(String line) {
        if (onTerminal) {
            err.print(ERASE + line);
            err.flush();
        }
    }

    void clear() {
        if (onTerminal) {
            err.print(ERASE);
            err.flush();
        }
    }
}
