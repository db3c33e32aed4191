package rimeward.sim.app;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import javax.tools.ToolProvider;

/** Builds a law's JAR the way its author would: compile one class, name it as a service. */
final class LawJars {
    /** Wishes nothing, ever. */
    static final String IDLE = """
            import java.util.Collections;
            import rimeward.core.decision.*;
            import rimeward.site.*;
            public class IdleLaw implements ControlLaw {
                public String name() { return "idle"; }
                public LawState start(Site site) { return LawState.NOTHING; }
                public Decision decide(Situation now, LawState state) {
                    Reason why = Reason.of(Cause.NOT_ASKED);
                    return new Decision(
                            RelaySet.none(), Collections.nCopies(now.site().machines().size(), why), state);
                }
            }
            """;

    private LawJars() {}

    static Path holding(Path folder, String className, String source) throws IOException {
        Path java = folder.resolve(className + ".java");
        Files.writeString(java, source, UTF_8);
        String classPath = System.getProperty("java.class.path");
        int failed = ToolProvider.getSystemJavaCompiler()
                .run(null, null, null, "-proc:none", "-cp", classPath, "-d", folder.toString(), java.toString());
        if (failed != 0) {
            throw new IllegalStateException("the test's law does not compile");
        }
        Path jar = folder.resolve("law.jar");
        try (OutputStream file = Files.newOutputStream(jar);
                JarOutputStream out = new JarOutputStream(file)) {
            put(out, className + ".class", Files.readAllBytes(folder.resolve(className + ".class")));
            put(out, "META-INF/services/rimeward.core.decision.ControlLaw", className.getBytes(UTF_8));
        }
        return jar;
    }

    static Path empty(Path folder) throws IOException {
        Path jar = folder.resolve("empty.jar");
        try (OutputStream file = Files.newOutputStream(jar);
                JarOutputStream out = new JarOutputStream(file)) {
            put(out, "readme.txt", "no law here".getBytes(UTF_8));
        }
        return jar;
    }

    private static void put(JarOutputStream out, String name, byte[] content) throws IOException {
        out.putNextEntry(new JarEntry(name));
        out.write(content);
        out.closeEntry();
    }
}
