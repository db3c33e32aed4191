package rimeward.sim.run;

import java.io.IOException;
import java.net.MalformedURLException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.ServiceConfigurationError;
import java.util.ServiceLoader;
import java.util.jar.JarFile;
import rimeward.core.decision.ControlLaw;
import rimeward.sim.scenario.BadInput;

/** Other people's laws: public classes in a JAR that name themselves in {@code META-INF/services}. */
final class LawJar {
    private static final String SERVICE = "META-INF/services/" + ControlLaw.class.getName();

    private LawJar() {}

    /** The law of this class, or the only one if the class is blank. */
    static ControlLaw law(Path jar, String className) throws BadInput {
        requireLaws(jar);
        List<ControlLaw> laws = laws(jar);
        List<String> names = laws.stream().map(law -> law.getClass().getName()).toList();
        if (laws.isEmpty()) {
            throw new BadInput(jar + " names no control law in " + SERVICE + "; write the class's full name there");
        }
        if (className.isBlank() && laws.size() > 1) {
            throw new BadInput(jar + " holds several laws; ask for one: " + jar + ":" + names.get(0) + " (also "
                    + String.join(", ", names.subList(1, names.size())) + ")");
        }
        int wanted = className.isBlank() ? 0 : names.indexOf(className);
        if (wanted < 0) {
            throw new BadInput(
                    jar + " names no law " + className + " in " + SERVICE + "; it names " + String.join(", ", names));
        }
        return named(jar, laws.get(wanted));
    }

    private static void requireLaws(Path jar) throws BadInput {
        if (!Files.isRegularFile(jar)) {
            throw new BadInput(jar + " does not exist; check the path of the law's JAR");
        }
        try (JarFile file = new JarFile(jar.toFile())) {
            if (file.getEntry(SERVICE) == null) {
                throw new BadInput(jar + " holds no control law: " + SERVICE
                        + " is missing; add that file with the full name of a public class that implements ControlLaw");
            }
        } catch (IOException e) {
            throw new BadInput(jar + " cannot be read as a JAR (" + e.getMessage() + "); build it again");
        }
    }

    /** The loader stays open for as long as the program runs: laws load their classes when they need them. */
    private static List<ControlLaw> laws(Path jar) throws BadInput {
        List<ControlLaw> laws = new ArrayList<>();
        try {
            URLClassLoader loader =
                    new URLClassLoader(new URL[] {jar.toUri().toURL()}, ControlLaw.class.getClassLoader());
            ServiceLoader.load(ControlLaw.class, loader).forEach(laws::add);
        } catch (MalformedURLException | ServiceConfigurationError | LinkageError e) {
            throw new BadInput("a law in " + jar + " cannot be loaded: " + e.getMessage()
                    + "; it must be a public class with a public constructor without arguments, built for Java "
                    + Runtime.version().feature() + " or older");
        }
        return laws;
    }

    private static ControlLaw named(Path jar, ControlLaw law) throws BadInput {
        String name;
        try {
            name = law.name();
        } catch (RuntimeException e) {
            throw new BadInput("the law in " + jar + " fails when asked for its name: " + e);
        }
        if (name == null || !name.matches("[a-z0-9][a-z0-9-]*")) {
            throw new BadInput("the law in " + jar + " calls itself \"" + name
                    + "\"; a name must be lower-case letters, digits and '-' only");
        }
        return law;
    }
}
