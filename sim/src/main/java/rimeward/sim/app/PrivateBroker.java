package rimeward.sim.app;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.File;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import rimeward.site.Messaging;

/** A Mosquitto of our own, on a spare port that only this machine reaches, for as long as the tunnel is watched. */
final class PrivateBroker implements AutoCloseable {
    private static final String HOST = "127.0.0.1";
    private static final int TRIES = 100;
    private static final long PAUSE_MS = 50;

    /** Ends the broker when our end of its input is closed, as it also is when this program is killed: none is left behind. */
    private static final String WHILE_WE_LIVE = "exec 3<&0; { read -r _ <&3; kill $$; } & exec \"$@\" 3<&-";

    private final Process process;
    private final int port;

    private PrivateBroker(Process process, int port) {
        this.process = process;
        this.port = port;
    }

    /**
     * Starts it.
     *
     * @param folder for its settings and its log
     * @return empty where the program is not installed, or does not start
     */
    static Optional<PrivateBroker> start(Path folder) throws IOException {
        Optional<Path> program = find("mosquitto");
        if (program.isEmpty()) {
            return Optional.empty();
        }
        int port = sparePort();
        Path settings = Files.writeString(
                folder.resolve("mosquitto.conf"),
                "listener " + port + " " + HOST + "\nallow_anonymous true\npersistence false\n",
                UTF_8);
        List<String> command = new ArrayList<>();
        find("setsid").ifPresent(path -> command.add(path.toString())); // else Ctrl-C would end it before we take leave
        command.addAll(List.of("sh", "-c", WHILE_WE_LIVE, "sh", program.get().toString(), "-c", settings.toString()));
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("mosquitto.log").toFile())
                .start();
        PrivateBroker broker = new PrivateBroker(process, port);
        if (broker.answers()) {
            return Optional.of(broker);
        }
        broker.close();
        return Optional.empty();
    }

    private static Optional<Path> find(String name) {
        String path =
                System.getenv().getOrDefault("PATH", "") + File.pathSeparator + "/usr/sbin"; // not in everybody's path
        return Stream.of(path.split(File.pathSeparator))
                .filter(folder -> !folder.isEmpty())
                .map(folder -> Path.of(folder, name))
                .filter(Files::isExecutable)
                .findFirst();
    }

    private static int sparePort() throws IOException {
        try (ServerSocket any = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            return any.getLocalPort();
        }
    }

    private boolean answers() {
        for (int tries = 0; tries < TRIES; tries++) {
            try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
                return socket.isConnected();
            } catch (IOException e) {
                if (hasEnded()) {
                    return false;
                }
            }
        }
        return false;
    }

    /** Or, a moment later, has not. */
    private boolean hasEnded() {
        try {
            return process.waitFor(PAUSE_MS, TimeUnit.MILLISECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return true;
        }
    }

    /** How a tunnel speaks to it; whoever sits at this machine may ask for everything. */
    Messaging.Mqtt messaging() {
        return new Messaging.Mqtt(
                HOST,
                port,
                new Messaging.Security.Plain(false),
                new Messaging.Login.None(),
                "homie",
                List.of(Messaging.Command.values()),
                true);
    }

    @Override
    public void close() {
        process.destroy();
    }
}
