package rimeward.broker;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rimeward.site.Messaging;

/** A broker of our own, set up by {@code config/mosquitto} as it stands: only places and the port are others. */
final class Mosquitto implements AutoCloseable {
    static final String HOST = "127.0.0.1";
    private static final Path SET_UP = Path.of("..", "config", "mosquitto").toAbsolutePath();

    private final Path dir;
    private int port;
    private @Nullable Process process;

    private Mosquitto(Path dir) {
        this.dir = dir;
    }

    /** Whether the programs are there at all. */
    static boolean isInstalled() {
        return Stream.of("mosquitto", "mosquitto_sub", "mosquitto_pub", "mosquitto_passwd", "openssl")
                .allMatch(Mosquitto::isThere);
    }

    private static boolean isThere(String program) {
        return Stream.of("/usr/sbin", "/usr/bin", "/usr/local/sbin", "/usr/local/bin")
                .anyMatch(folder -> Files.isExecutable(Path.of(folder, program)));
    }

    /** Set up in the folder and started; everybody's password is the user's name. */
    static Mosquitto begin(Path dir, String... users) throws IOException, InterruptedException {
        Mosquitto broker = new Mosquitto(dir);
        broker.port = sparePort();
        run(SET_UP.resolve("make-certificates").toString(), dir.resolve("certs").toString(), HOST);
        Files.copy(SET_UP.resolve("acl"), dir.resolve("acl"));
        Files.createFile(dir.resolve("passwords"));
        for (String user : users) {
            broker.password(user, user);
        }
        broker.password("grower", "grower");
        broker.start();
        return broker;
    }

    static int sparePort() throws IOException {
        try (ServerSocket any = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            return any.getLocalPort();
        }
    }

    int port() {
        return port;
    }

    Path dir() {
        return dir;
    }

    /** Sets a password for the broker, and writes it where the tunnel reads it. */
    void password(String user, String password) throws IOException, InterruptedException {
        passwordAtBroker(user, password);
        Files.writeString(dir.resolve(user + ".password"), password + "\n", UTF_8);
    }

    void passwordAtBroker(String user, String password) throws IOException, InterruptedException {
        run("mosquitto_passwd", "-b", dir.resolve("passwords").toString(), user, password);
    }

    void start() throws IOException {
        String text = Files.readString(SET_UP.resolve("rimeward.conf"), UTF_8)
                .replace("listener 8883", "listener " + port + " " + HOST)
                .replace("/etc/mosquitto/", dir + "/");
        String own =
                "\nuser " + System.getProperty("user.name") + "\npersistence true\npersistence_location " + dir + "/\n";
        Path settings = Files.writeString(dir.resolve("mosquitto.conf"), text + own, UTF_8);
        process = new ProcessBuilder(sbin(), "-c", settings.toString())
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.appendTo(
                        dir.resolve("broker.log").toFile()))
                .start();
        await().atMost(Duration.ofSeconds(20)).until(this::answers);
    }

    private static String sbin() {
        return Files.isExecutable(Path.of("/usr/sbin/mosquitto")) ? "/usr/sbin/mosquitto" : "mosquitto";
    }

    private boolean answers() {
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
            return socket.isConnected();
        } catch (IOException e) {
            return false;
        }
    }

    /** Kills it without a chance to write anything. */
    void kill() throws InterruptedException {
        signal("KILL");
        running().waitFor();
    }

    /** It stops to answer, while the kernel goes on to accept; {@code CONT} thaws it. {@code HUP} makes it read ACL and passwords anew. */
    void signal(String name) {
        try {
            run("kill", "-" + name, String.valueOf(pid()));
        } catch (IOException | InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Of its process. */
    long pid() {
        return running().pid();
    }

    private Process running() {
        Process now = process;
        if (now == null) {
            throw new IllegalStateException("not started");
        }
        return now;
    }

    /** As this user would have it in his settings. */
    Messaging.Mqtt settings(String user) {
        return settings(user, port);
    }

    /** The same by way of another port. */
    Messaging.Mqtt settings(String user, int atPort) {
        return settings(dir, user, atPort);
    }

    /** The same of a broker that another process has set up. */
    static Messaging.Mqtt settings(Path dir, String user, int atPort) {
        return new Messaging.Mqtt(
                HOST,
                atPort,
                new Messaging.Security.Tls(
                        new Messaging.Trust.Own(dir.resolve("certs/ca.pem").toString()), new Messaging.Identity.None()),
                new Messaging.Login.Password(
                        user, dir.resolve(user + ".password").toString()),
                "homie",
                List.of(),
                false);
    }

    /** A stock subscriber, which prints a line for each message: whether it is an old one, topic and payload. */
    Subscriber subscribe(String filter) throws IOException {
        return new Subscriber(client("mosquitto_sub", "-q", "2", "-F", "%r %t %p", "-t", filter));
    }

    List<String> client(String program, String... more) {
        List<String> command = new ArrayList<>(List.of(program, "-h", HOST, "-p", String.valueOf(port)));
        command.addAll(List.of("--cafile", dir.resolve("certs/ca.pem").toString(), "-u", "grower", "-P", "grower"));
        command.addAll(List.of(more));
        return command;
    }

    static void run(String... command) throws IOException, InterruptedException {
        Process ran = new ProcessBuilder(command).redirectErrorStream(true).start();
        String said = new String(ran.getInputStream().readAllBytes(), UTF_8);
        assertThat(ran.waitFor(30, TimeUnit.SECONDS)).as(said).isTrue();
        assertThat(ran.exitValue()).as(String.join(" ", command) + ": " + said).isZero();
    }

    @Override
    public void close() throws InterruptedException {
        Process now = process;
        if (now != null) {
            now.destroyForcibly().waitFor();
        }
    }
}
