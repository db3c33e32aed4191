package rimeward.app;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import rimeward.fitting.Clock;
import rimeward.fitting.Person;

/** The person at the keyboard, and the time that passes for both. */
final class Terminal implements Person, Clock {
    private final BufferedReader in = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
    private final PrintWriter out;

    Terminal(PrintWriter out) {
        this.out = out;
    }

    /** Whether somebody can answer: not only a file, a pipe or nothing. Not asked of the JDK: newer ones say there is a console even then. */
    static boolean isThere() {
        try {
            String input = Files.readSymbolicLink(Path.of("/proc/self/fd/0")).toString();
            return input.startsWith("/dev/pts/") || input.startsWith("/dev/tty") || input.equals("/dev/console");
        } catch (IOException | UnsupportedOperationException e) {
            return false; // no Linux, hence no relays
        }
    }

    @Override
    public void say(String text) {
        out.println(text);
        out.flush();
    }

    @Override
    public String ask(String question) {
        out.print(question);
        out.flush();
        return line().orElse("q");
    }

    @Override
    public Optional<String> typed() {
        try {
            return in.ready() ? line() : Optional.empty();
        } catch (IOException e) {
            return Optional.of("q");
        }
    }

    private Optional<String> line() {
        try {
            return Optional.ofNullable(in.readLine()).map(String::strip);
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    @Override
    public double nowS() {
        return System.nanoTime() / 1e9;
    }

    @Override
    public void waitS(double seconds) {
        try {
            Thread.sleep((long) (seconds * 1000));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
