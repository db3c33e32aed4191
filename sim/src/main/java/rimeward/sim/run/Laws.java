package rimeward.sim.run;

import java.nio.file.Path;
import java.util.List;
import rimeward.core.decision.ControlLaw;
import rimeward.core.decision.DutyLaw;
import rimeward.sim.law.AlwaysOn;
import rimeward.sim.law.ByHand;
import rimeward.sim.law.DryerAlone;
import rimeward.sim.law.FixedDuty;
import rimeward.sim.law.Thermostat;
import rimeward.sim.scenario.BadInput;

/** The laws that can be asked for by name, and those in somebody's JAR. */
public final class Laws {
    private static final List<LawChoice> KNOWN = List.of(
            guarded(new DutyLaw(), "Rimeward's own law, with the guard"),
            bare(new Thermostat(), "a plain air thermostat on the heater"),
            bare(new DryerAlone(), "the dryer on its own humidistat, no heater"),
            bare(new ByHand(), "each evening by the forecast: nothing, dryer or heater"),
            bare(new AlwaysOn(), "the heater on its own dial"),
            guarded(FixedDuty.heaterWarms(), "ours, but the heater always holds the warm duty"),
            guarded(FixedDuty.dryerWarms(), "ours, but the dryer holds the warm duty whenever it can"));

    private Laws() {}

    public static List<String> names() {
        return KNOWN.stream().map(choice -> choice.label().name()).toList();
    }

    /**
     * A law by name, or from a JAR: {@code path.jar}, or {@code path.jar:class} where it holds several. A law from a JAR runs under the
     * guard.
     */
    public static LawChoice find(String asked) throws BadInput {
        for (LawChoice known : KNOWN) {
            if (known.label().name().equals(asked)) {
                return known;
            }
        }
        int end = asked.lastIndexOf(".jar");
        if (end < 0) {
            throw new BadInput("law \"" + asked + "\" is not known; use one of " + String.join(", ", names())
                    + ", or the path of a JAR that holds a law");
        }
        String rest = asked.substring(end + ".jar".length());
        if (!rest.isEmpty() && !rest.startsWith(":")) {
            throw new BadInput("law \"" + asked + "\" is not understood; write path.jar or path.jar:package.Class");
        }
        ControlLaw law = LawJar.law(Path.of(asked.substring(0, end + ".jar".length())), rest.replaceFirst(":", ""));
        if (names().contains(law.name())) {
            throw new BadInput("the law in " + asked + " calls itself \"" + law.name()
                    + "\", which is one of ours; give it a name of its own");
        }
        return guarded(
                law,
                "from " + Path.of(asked.substring(0, end + ".jar".length())).getFileName() + ", with the guard");
    }

    private static LawChoice guarded(ControlLaw law, String says) {
        return new LawChoice(new LawLabel(law.name(), says, true), law);
    }

    private static LawChoice bare(ControlLaw law, String says) {
        return new LawChoice(new LawLabel(law.name(), says, false), law);
    }
}
